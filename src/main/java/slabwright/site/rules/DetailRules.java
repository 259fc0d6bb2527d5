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
import slabwright.site.Refusal;
import slabwright.site.Slab;
import slabwright.units.Length;

/** What must hold of machines, slab, air and declined advice. */
final class DetailRules {
  private DetailRules() {}

  static void machines(FloorArea area, String path, List<Refusal> out) {
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < area.machines().size(); i++) {
      Machine m = area.machines().get(i);
      String at = path + ".machines[" + i + "]";
      String its = " of machine \"" + m.name() + "\"";
      IdRules.check(m.id(), at + ".id", ids, out);
      SizeRules.positive(m.body(), "The body width" + its, at + ".body", out);
      SizeRules.positive(m.grinding(), "The grinding width" + its, at + ".grinding", out);
      SizeRules.notNegative(m.clearance(), "The side clearance" + its, at + ".clearance", out);
      m.travel()
          .length()
          .ifPresent(v -> SizeRules.positive(v, "The length" + its, at + ".length", out));
      m.travel()
          .passing()
          .ifPresent(
              v -> SizeRules.notNegative(v, "The passing clearance" + its, at + ".passing", out));
      if (m.grinding().mm() > m.body().mm()) {
        out.add(
            Refusal.at(
                at + ".grinding",
                "The grinding width" + its + " is larger than its body; swap or correct them."));
      }
    }
  }

  static void slab(FloorArea area, String path, List<Refusal> out) {
    Slab s = area.slab();
    String at = path + ".slab";
    s.mohs().ifPresent(v -> SizeRules.between(v, 1, 10, "The Mohs reading", at + ".mohs", out));
    s.ageYears()
        .ifPresent(
            v -> SizeRules.between(v, 0, 500, "The slab's age in years", at + ".ageYears", out));
    s.surfaceC()
        .ifPresent(
            v ->
                SizeRules.between(
                    v, -30, 80, "The surface temperature in °C", at + ".surfaceC", out));
    s.airC()
        .ifPresent(
            v -> SizeRules.between(v, -30, 60, "The air temperature in °C", at + ".airC", out));
    s.humidity()
        .ifPresent(
            v -> SizeRules.between(v, 1, 100, "The relative humidity in %", at + ".humidity", out));
    s.thickness()
        .ifPresent(v -> SizeRules.positive(v, "The slab's thickness", at + ".thickness", out));
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
    SizeRules.between(r.value(), 0, high, "The " + r.test() + " moisture reading", at, out);
  }

  static void air(FloorArea area, String path, List<Refusal> out) {
    AirSpace a = area.air();
    a.ceiling()
        .map(Length::mm)
        .ifPresent(
            v ->
                SizeRules.between(
                    v, 1500, 100_000, "The ceiling height in mm", path + ".air.ceiling", out));
    SizeRules.between(
        a.airflowM3PerHour(), 0, 1e7, "The airflow in m³/h", path + ".air.airflowM3PerHour", out);
    SizeRules.between(a.mixing(), 1, 20, "The mixing factor K", path + ".air.mixing", out);
  }

  static void declined(FloorArea area, String path, List<Refusal> out) {
    Set<AdviceId> seen = EnumSet.noneOf(AdviceId.class);
    for (int i = 0; i < area.declined().size(); i++) {
      AdviceId advice = area.declined().get(i).advice();
      if (!seen.add(advice)) {
        out.add(
            Refusal.at(
                path + ".declined[" + i + "].advice",
                "Advice \""
                    + advice.word()
                    + "\" is declined twice for floor area \""
                    + area.name()
                    + "\"; keep one entry."));
      }
    }
  }
}
