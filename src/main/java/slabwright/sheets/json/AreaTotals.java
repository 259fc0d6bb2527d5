package slabwright.sheets.json;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.inlay.masking.DyeNeed;
import slabwright.site.Exposure;
import slabwright.work.AreaWorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.CoatPlan;
import slabwright.work.handover.Reopening;
import slabwright.work.prep.ZoneHours;

/**
 * What sheets 5 to 7 print of one floor area beyond the plan's own fields: sums and verdicts.
 *
 * @param dust kg off the floor
 */
record AreaTotals(
    String area,
    Optional<Exposure> wanted,
    Figure<Duration> machineTime,
    Figure<Duration> handTime,
    List<ZoneHours> zones,
    Figure<Double> dust,
    List<Coat> coats,
    List<Dye> dyes,
    Optional<Reopening> reopening) {
  AreaTotals {
    dyes = List.copyOf(dyes);
    zones = List.copyOf(zones);
    coats = List.copyOf(coats);
  }

  /**
   * One product.
   *
   * @param totalVolume mm³, all coats
   * @param mixing time for one batch
   */
  record Coat(
      String product,
      int coats,
      double mm2,
      double cutInMm,
      Figure<Double> totalVolume,
      Figure<Duration> coatTime,
      Figure<Duration> workingTime,
      Figure<Duration> mixing,
      Figure<Boolean> keepsWetEdge,
      Figure<Boolean> cutInOutlastsWetEdge,
      List<BatchLanes> batchLanes,
      List<Double> laneAreas) {
    Coat {
      batchLanes = List.copyOf(batchLanes);
      laneAreas = List.copyOf(laneAreas);
    }

    static Coat of(CoatPlan c) {
      return new Coat(
          c.product().id(),
          c.job().coats(),
          c.job().mm2(),
          c.job().cutIn(),
          c.totalVolume(),
          c.coatTime(),
          c.workingTime(),
          c.product().mixing().mixingTime(),
          c.keepsWetEdge(),
          c.cutInOutlastsWetEdge(),
          c.batchLanes(),
          sums(c));
    }

    /** Floor rolled by the end of each lane, mm². */
    private static List<Double> sums(CoatPlan c) {
      double[] sum = {0};
      return c.lanes().maybe().flatMap(l -> l).stream()
          .flatMap(l -> l.lanes().stream())
          .map(l -> sum[0] += l.region().area())
          .toList();
    }
  }

  /** What one stencil takes; the same volume in mm³ as in litres. */
  record Dye(String inlay, String colour, DyeNeed need, OptionalDouble mm3) {
    static Optional<Dye> of(AreaWorkPlan w, String inlay, String colour) {
      return w.dyeNeed(inlay, colour)
          .map(n -> new Dye(inlay, colour, n, n.litres().stream().map(l -> l * 1e6).findFirst()));
    }
  }

  private static List<Dye> dyes(AreaWorkPlan w) {
    return w.floor().inlays().stream()
        .flatMap(i -> i.dyes().stream().flatMap(d -> Dye.of(w, i.id(), d.colour()).stream()))
        .toList();
  }

  static AreaTotals of(AreaWorkPlan w, Optional<Reopening> reopening) {
    return new AreaTotals(
        w.id(),
        w.floor().prep().wanted(),
        w.prep().machineTime(),
        w.prep().handTime(),
        w.prep().byZone(),
        w.prep().dust(),
        w.coats().stream().map(Coat::of).toList(),
        dyes(w),
        reopening);
  }
}
