package slabwright.desk.model.compute;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.floor.QuickTakeoff;
import slabwright.inlay.InlayPlan;
import slabwright.project.SiteResult;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;

/** The figures that never leave, from whatever has been worked out. */
public final class Tally {
  private Tally() {}

  public static List<TallyItem> of(
      SelectedAreaResults answers,
      Optional<SiteResult> job,
      Optional<String> areaId,
      UnitSystem units) {
    List<TallyItem> items = new ArrayList<>();
    if (answers.glance().isPresent()) {
      floor(answers.glance().get(), units, items);
    } else {
      for (String what : List.of("Net floor", "Machine", "By hand", "Edges", "Cut-in")) {
        items.add(TallyItem.unknown(what));
      }
    }
    items.add(inlay(answers, units));
    items.add(crew(job));
    items.add(air(job, areaId));
    return items;
  }

  private static void floor(QuickTakeoff t, UnitSystem units, List<TallyItem> items) {
    String about = t.isExact() ? "" : "≈ ";
    items.add(TallyItem.of("Net floor", about + QuantityFormat.area(t.net(), units)));
    boolean machines = !t.area().machines().isEmpty();
    items.add(
        machines
            ? TallyItem.of(
                "Machine", about + QuantityFormat.area(t.asFound().machine().area(), units))
            : new TallyItem("Machine", "none set", TallyItem.Emphasis.UNKNOWN));
    String hand = about + QuantityFormat.area(t.asFound().hand().area(), units);
    items.add(new TallyItem("By hand", hand, TallyItem.Emphasis.LOOK));
    items.add(TallyItem.of("Edges", about + QuantityFormat.run(t.edgeLength(), units)));
    items.add(TallyItem.of("Cut-in", about + QuantityFormat.run(t.cutIn(), units)));
  }

  private static TallyItem inlay(SelectedAreaResults answers, UnitSystem units) {
    double area =
        answers.inlays().stream()
            .flatMap(i -> i.plan().stream())
            .mapToDouble(InlayPlan::openingArea)
            .sum();
    return area > 0
        ? TallyItem.of("Inlay", QuantityFormat.area(area, units))
        : TallyItem.unknown("Inlay");
  }

  private static TallyItem crew(Optional<SiteResult> job) {
    return job.flatMap(d -> d.work().days().maybe())
        .map(d -> QuantityFormat.number(d.personTime().toMinutes() / 60.0, 0) + " h")
        .map(v -> TallyItem.of("Crew, whole site", v))
        .orElse(TallyItem.unknown("Crew, whole site"));
  }

  private static TallyItem air(Optional<SiteResult> job, Optional<String> areaId) {
    return job.flatMap(d -> areaId.flatMap(d.work()::area))
        .flatMap(a -> a.air().maybe())
        .map(a -> a.screening().map(Tally::air).orElse(TallyItem.of("Air, fan off", "no vapour")))
        .orElse(TallyItem.unknown("Air, fan off"));
  }

  private static TallyItem air(AirScreening s) {
    double peak = s.closed().peakLel();
    String value = QuantityFormat.number(peak * 100, peak < 0.1 ? 1 : 0) + " % of LEL";
    TallyItem.Emphasis tone =
        peak >= AirFigures.HAZARDOUS_SHARE ? TallyItem.Emphasis.CANT : TallyItem.Emphasis.PLAIN;
    return new TallyItem("Air, fan off", value, tone);
  }
}
