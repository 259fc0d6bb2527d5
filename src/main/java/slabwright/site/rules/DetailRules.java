package slabwright.site.rules;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slabwright.site.AdviceId;
import slabwright.site.AirSpace;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.MoistureReading;
import slabwright.site.Slab;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** What must hold of machines, slab, air and declined advice. */
final class DetailRules {
  private DetailRules() {}

  static void machines(FloorArea area, String path, List<Refusal> out) {
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < area.machines().size(); i++) {
      Machine m = area.machines().get(i);
      String at = path + ".machines[" + i + "]";
      IdRules.check(m.id(), at + ".id", ids, out);
      SizeRules.positive(
          m.body(), Message.of("site.detail-rules.the-body-width", m.name()), at + ".body", out);
      SizeRules.positive(
          m.grinding(),
          Message.of("site.detail-rules.the-grinding-width", m.name()),
          at + ".grinding",
          out);
      SizeRules.notNegative(
          m.clearance(),
          Message.of("site.detail-rules.the-side-clearance", m.name()),
          at + ".clearance",
          out);
      m.travel()
          .length()
          .ifPresent(
              v ->
                  SizeRules.positive(
                      v,
                      Message.of("site.detail-rules.the-length", m.name()),
                      at + ".length",
                      out));
      m.travel()
          .passing()
          .ifPresent(
              v ->
                  SizeRules.notNegative(
                      v,
                      Message.of("site.detail-rules.the-passing-clearance", m.name()),
                      at + ".passing",
                      out));
      if (m.grinding().mm() > m.body().mm()) {
        out.add(
            Refusal.at(
                at + ".grinding",
                Message.of("site.detail-rules.the-grinding-width-is-larger", m.name())));
      }
    }
  }

  static void slab(FloorArea area, String path, List<Refusal> out) {
    Slab s = area.slab();
    String at = path + ".slab";
    s.mohs()
        .ifPresent(
            v ->
                SizeRules.between(
                    v, 1, 10, Message.of("site.detail-rules.the-mohs-reading"), at + ".mohs", out));
    s.ageYears()
        .ifPresent(
            v ->
                SizeRules.between(
                    v,
                    0,
                    500,
                    Message.of("site.detail-rules.the-slabs-age-in-years"),
                    at + ".ageYears",
                    out));
    s.surfaceC()
        .ifPresent(
            v ->
                SizeRules.between(
                    v,
                    -30,
                    80,
                    Message.of("site.detail-rules.the-surface-temperature-in-c"),
                    at + ".surfaceC",
                    out));
    s.airC()
        .ifPresent(
            v ->
                SizeRules.between(
                    v,
                    -30,
                    60,
                    Message.of("site.detail-rules.the-air-temperature-in-c"),
                    at + ".airC",
                    out));
    s.humidity()
        .ifPresent(
            v ->
                SizeRules.between(
                    v,
                    1,
                    100,
                    Message.of("site.detail-rules.the-relative-humidity-in"),
                    at + ".humidity",
                    out));
    s.thickness()
        .ifPresent(
            v ->
                SizeRules.positive(
                    v,
                    Message.of("site.detail-rules.the-slabs-thickness"),
                    at + ".thickness",
                    out));
    for (int i = 0; i < s.moisture().size(); i++) {
      moisture(s.moisture().get(i), at + ".moisture[" + i + "].value", out);
    }
  }

  private static void moisture(MoistureReading r, String at, List<Refusal> out) {
    double high =
        switch (r.test()) {
          case F2170 -> 100;
          case F1869 -> 50;
          case D4263 -> 1;
        };
    SizeRules.between(
        r.value(),
        0,
        high,
        Message.of("site.detail-rules.the-moisture-reading", r.test().name()),
        at,
        out);
  }

  static void air(FloorArea area, String path, List<Refusal> out) {
    AirSpace a = area.air();
    a.ceiling()
        .map(Length::mm)
        .ifPresent(
            v ->
                SizeRules.between(
                    v,
                    1500,
                    100_000,
                    Message.of("site.detail-rules.the-ceiling-height-in-mm"),
                    path + ".air.ceiling",
                    out));
    SizeRules.between(
        a.airflowM3PerHour(),
        0,
        1e7,
        Message.of("site.detail-rules.the-airflow-in-m-h"),
        path + ".air.airflowM3PerHour",
        out);
    SizeRules.between(
        a.mixing(),
        1,
        20,
        Message.of("site.detail-rules.the-mixing-factor-k"),
        path + ".air.mixing",
        out);
  }

  static void declined(FloorArea area, String path, List<Refusal> out) {
    Set<AdviceId> seen = EnumSet.noneOf(AdviceId.class);
    for (int i = 0; i < area.declined().size(); i++) {
      AdviceId advice = area.declined().get(i).advice();
      if (!seen.add(advice)) {
        out.add(
            Refusal.at(
                path + ".declined[" + i + "].advice",
                Message.of(
                    "site.detail-rules.advice-is-declined-twice-for", advice.word(), area.name())));
      }
    }
  }
}
