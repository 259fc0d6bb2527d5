package slabwright.work.coat;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.site.Finish;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;

/**
 * One product on one floor.
 *
 * @param place in the finish system, from 1
 * @param mm2 it goes onto
 * @param cutIn mm to cut in before rolling; 0 where it is sprayed, for the walls are masked then
 * @param grid for lanes; known and empty where there are none, as in an inlay
 * @param rate mm² an hour of one person
 * @param people who lay at once
 * @param celsius the air's temperature, if measured
 * @param slabCelsius the slab's surface temperature, if measured
 * @param crew people there are
 */
@RecordBuilder
public record CoatParameters(
    String area,
    int place,
    Product product,
    Finish.Target target,
    int coats,
    double mm2,
    double cutIn,
    Figure<Optional<LaneGrid>> grid,
    Figure<Double> rate,
    Figure<Integer> people,
    OptionalDouble celsius,
    OptionalDouble slabCelsius,
    Figure<Integer> crew)
    implements CoatParametersBuilder.With {

  /** A section of it, by its share of the area and of the edge. */
  CoatParameters of(double share, double edge, Figure<Optional<LaneGrid>> lanes) {
    return new CoatParameters(
        area,
        place,
        product,
        target,
        coats,
        mm2 * share,
        cutIn * edge,
        lanes,
        rate,
        people,
        celsius,
        slabCelsius,
        crew);
  }

  /** What drying, recoat and traffic go by: the colder of slab and air. */
  Figure<Double> colder() {
    return air().map(c -> Math.min(c, slabCelsius.orElse(c)));
  }

  /** What working time and wet edge go by: the warmer of slab and air. */
  public Figure<Double> warmer() {
    return air().map(c -> Math.max(c, slabCelsius.orElse(c)));
  }

  /** The air's temperature, or a sentence that asks for it. */
  private Figure<Double> air() {
    return celsius.isPresent()
        ? Figure.known(celsius.getAsDouble())
        : Figure.refused(Message.of("work.coat-parameters.air-temperature-not-on-plan", area));
  }
}
