package slabwright.site.rules;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slabwright.site.AreaDetails;
import slabwright.site.FloorArea;
import slabwright.site.job.StepHold;
import slabwright.site.job.Stop;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** What must hold of what else is known of a floor area. */
final class AreaDetailsRules {
  private AreaDetailsRules() {}

  static void taped(FloorArea area, String path, List<Refusal> out) {
    List<String> lines = area.details().taped();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).indexOf('\n') >= 0 || lines.get(i).indexOf('\r') >= 0) {
        out.add(
            Refusal.at(
                path + ".taped[" + i + "]",
                Message.of("site.area-details-rules.taped-line-of-holds-a", i + 1, area.name())));
      }
    }
  }

  static void built(FloorArea area, String path, List<Refusal> out) {
    area.details()
        .built()
        .year()
        .ifPresent(
            y ->
                SizeRules.between(
                    y,
                    1000,
                    2200,
                    Message.of("site.area-details-rules.the-year-built"),
                    path + ".built.year",
                    out));
  }

  static void divisions(FloorArea area, String path, List<Refusal> out) {
    List<AreaDetails.CoatDivision> all = area.details().coatDivisions();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).line().stream().distinct().count() < 2) {
        out.add(
            Refusal.at(
                path + ".coatDivisions[" + i + "].line",
                Message.of(
                    "site.area-details-rules.line-that-divides-a-coat", i + 1, area.name())));
      }
    }
  }

  static void stops(FloorArea area, String path, List<Refusal> out) {
    Set<Stop.Kind> seen = EnumSet.noneOf(Stop.Kind.class);
    List<Stop> stops = area.details().stops();
    for (int i = 0; i < stops.size(); i++) {
      Stop stop = stops.get(i);
      String at = path + ".stops[" + i + "]";
      String word = stop.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      if (!seen.add(stop.kind())) {
        out.add(
            Refusal.at(
                at + ".kind",
                Message.of("site.area-details-rules.stop-stands-twice", word, area.name())));
      }
      if (!isSigned(stop.state())) {
        out.add(
            Refusal.at(
                at + ".by",
                Message.of("site.area-details-rules.stop-settled-by-nobody", word, area.name())));
      }
    }
  }

  private static boolean isSigned(Stop.State state) {
    if (state instanceof Stop.Cleared c) {
      return !c.by().isBlank();
    }
    return !(state instanceof Stop.Confirmed c) || !c.by().isBlank();
  }

  static void holds(FloorArea area, String path, List<Refusal> out) {
    Set<String> seen = new HashSet<>();
    List<StepHold> holds = area.details().holds();
    for (int i = 0; i < holds.size(); i++) {
      StepHold hold = holds.get(i);
      String at = path + ".holds[" + i + "]";
      if (!hold.step().matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
        out.add(
            Refusal.at(
                at + ".step",
                Message.of(
                    "site.area-details-rules.held-step-is-no-word", hold.step(), area.name())));
      } else if (!seen.add(hold.step())) {
        out.add(
            Refusal.at(
                at + ".step",
                Message.of(
                    "site.area-details-rules.step-is-held-twice", hold.step(), area.name())));
      }
      if (hold.reason().isBlank()) {
        out.add(
            Refusal.at(
                at + ".reason",
                Message.of(
                    "site.area-details-rules.hold-has-no-reason", hold.step(), area.name())));
      }
    }
  }
}
