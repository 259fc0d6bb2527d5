package slabwright.work;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slabwright.inlay.masking.DyeNeed;
import slabwright.inlay.masking.DyeRates;
import slabwright.site.Finish;
import slabwright.site.Site;
import slabwright.units.QuantityFormat;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.TemperatureTable;
import slabwright.work.coat.ClientAdvice;
import slabwright.work.coat.CoatPlan;
import slabwright.work.prep.PrepPlan;
import slabwright.work.rule.RuleNote;
import slabwright.work.stop.JobStop;
import slabwright.work.top.TopPlan;

/**
 * All work on one floor area.
 *
 * @param tops counter tops and steps, hours apart from the floor's
 * @param bags vacuum bags for floor and tops, each as the shop's largest vacuum takes
 * @param coats the finish system's coats in order
 * @param unknownProducts ids that the finish names and the shop book lacks
 * @param notes rules that apply
 * @param advice that may be declined in writing
 * @param stops what must be settled before work starts, open and settled
 */
@RecordBuilder
public record AreaWorkPlan(
    AreaTakeoff floor,
    PrepPlan prep,
    List<TopPlan> tops,
    Figure<Integer> bags,
    List<CoatPlan> coats,
    List<String> unknownProducts,
    Figure<AirPlan> air,
    List<RuleNote> notes,
    List<ClientAdvice> advice,
    List<JobStop> stops)
    implements AreaWorkPlanBuilder.With {
  public AreaWorkPlan {
    tops = List.copyOf(tops);
    coats = List.copyOf(coats);
    unknownProducts = List.copyOf(unknownProducts);
    notes = List.copyOf(notes);
    advice = List.copyOf(advice);
    stops = List.copyOf(stops);
  }

  /**
   * What a stencil takes by the shop book; empty when there is no such inlay or colour, or the
   * finish has no dye for it.
   */
  public Optional<DyeNeed> dyeNeed(String inlayId, String colour) {
    return floor.inlays().stream()
        .filter(i -> i.id().equals(inlayId))
        .flatMap(i -> i.dyes().stream())
        .filter(d -> d.colour().equals(colour))
        .findFirst()
        .flatMap(this::dyeNeed);
  }

  private Optional<DyeNeed> dyeNeed(InlayTakeoff.StencilDye dye) {
    return coats.stream()
        .filter(c -> c.job().target() == Finish.Target.INLAY)
        .filter(c -> c.product().id().equals(dye.product()))
        .findFirst()
        .map(c -> DyeNeed.of(dye.openings(), rates(c)));
  }

  private static DyeRates rates(CoatPlan coat) {
    Product p = coat.product();
    return new DyeRates(
        OptionalInt.of(coat.job().coats()),
        optional(p.spread().coverage()),
        optional(p.spread().loss()),
        optional(p.laying().jar().map(v -> v / QuantityFormat.LITRE_MM3)));
  }

  private static OptionalDouble optional(Figure<Double> figure) {
    return figure.maybe().map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  public String id() {
    return floor.area().id();
  }

  public String name() {
    return floor.area().name();
  }

  /**
   * Length that is masked before dye is sprayed on the floor, once for all coats, in mm: walls,
   * what stands on the floor, doorways.
   */
  public double wallMasking() {
    boolean sprayed =
        coats.stream()
            .filter(c -> c.job().target() == Finish.Target.WHOLE_FLOOR)
            .anyMatch(c -> c.product().laying().isSprayed());
    return sprayed ? floor.masked() : 0;
  }

  /**
   * How long a coat that ends then takes to dry or to bear: outdoors by the forecast where there is
   * one, else by the readings.
   */
  public Figure<Duration> dries(
      Site site, CoatPlan coat, Figure<TemperatureTable> table, LocalDateTime end) {
    WeatherDays weather = new WeatherDays(site, floor, coats);
    return weather.count()
        ? table.flatMap(t -> weather.dries(t, end).orElse(coat.at(table)))
        : coat.at(table);
  }

  /** The coat of a product, if the finish has one. */
  public Optional<CoatPlan> coat(String productId) {
    return coats.stream().filter(c -> c.product().id().equals(productId)).findFirst();
  }
}
