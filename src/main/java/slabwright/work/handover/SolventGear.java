package slabwright.work.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.shape.Vec;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.FanShortage;
import slabwright.work.SolventPlaces;
import slabwright.work.WorkPlan;

/**
 * What is loaded because solvent is laid, as many as the fire plan, the check lists and the plan of
 * the air ask for; kinds of it by common practice, no source.
 */
record SolventGear(WorkPlan plan) {
  private static final String STATIC = "work.ignition-check.film-static";

  /** What the air of the plan asks for beyond the fans that are there. */
  List<HandoverDocument.Row> fans() {
    return FanShortage.of(plan).stream()
        .map(
            f ->
                tick(
                    Message.of(
                        "work.load-list.fans-short",
                        RateFormat.airflow(f.asked(), units()),
                        RateFormat.airflow(f.moved(), units()),
                        f.more()),
                    ""))
        .toList();
  }

  List<HandoverDocument.Row> rows() {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    rows.add(tick(Message.of("work.load-list.gas-meter-for-flammable-vapour"), ""));
    floors()
        .flatMap(a -> hoses(a).stream())
        .reduce((a, b) -> Message.of("work.load-list.hoses-and", a, b))
        .ifPresent(h -> rows.add(tick(Message.of("work.load-list.meter-hoses", h), "")));
    rows.add(tick(Message.of("work.load-list.fire-extinguisher-closed-metal", exits()), ""));
    rows.add(tick(Message.of("work.load-list.lock-and-tag"), ""));
    if (airs().anyMatch(a -> a.ignition().during().stream().anyMatch(SolventGear::isStatic))) {
      rows.add(tick(Message.of("work.load-list.earthing-strap"), ""));
    }
    return rows;
  }

  private static boolean isStatic(Message m) {
    return m.key().equals(STATIC);
  }

  /**
   * Of one floor, by the numbers of its places on the plan of the air: straight from the way in, to
   * the next whole foot or half metre, and never shorter.
   */
  private Optional<Message> hoses(AreaWorkPlan a) {
    Optional<Vec> from = a.floor().wayOut();
    List<Vec> points = places(a).map(SolventPlaces::meterPoints).orElse(List.of());
    if (from.isEmpty() || points.isEmpty()) {
      return Optional.empty();
    }
    double step = units() == UnitSystem.METRIC ? 500 : 304.8;
    List<String> lengths = new ArrayList<>();
    for (Vec p : points) {
      double mm = Math.ceil(p.distanceTo(from.get()) / step) * step;
      lengths.add("M" + (lengths.size() + 1) + " " + QuantityFormat.run(mm, units()));
    }
    return Optional.of(Message.of("work.load-list.hoses-of", a.name(), String.join(", ", lengths)));
  }

  /** An extinguisher beside each way out that the fire plan shows. */
  private int exits() {
    int all = floors().flatMap(a -> places(a).stream()).mapToInt(p -> p.exits().size()).sum();
    return Math.max(1, all);
  }

  private Optional<SolventPlaces> places(AreaWorkPlan a) {
    return a.air()
        .maybe()
        .map(air -> SolventPlaces.of(a.floor().area(), a.floor().floor(), air, units()));
  }

  private Stream<AreaWorkPlan> floors() {
    return plan.areas().stream()
        .filter(a -> a.air().maybe().filter(SolventGear::hasSolvent).isPresent());
  }

  private Stream<AirPlan> airs() {
    return floors().flatMap(a -> a.air().maybe().stream());
  }

  private static boolean hasSolvent(AirPlan air) {
    return !air.ignition().before().isEmpty();
  }

  private UnitSystem units() {
    return plan.site().units();
  }

  private static HandoverDocument.Row tick(Message what, Object value) {
    return HandoverDocument.Row.toTick(what, value);
  }
}
