package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.site.job.StepHold;
import slabwright.site.job.Stop;

/**
 * What else is known of a floor area.
 *
 * @param taped lines of the tape file that the outline was made from, as typed; none when it was
 *     not taped
 * @param coatDivisions lines where a coat is divided
 * @param stops what must be settled before work, each kind once
 * @param holds steps held back by hand, each kind once
 */
@RecordBuilder
public record AreaDetails(
    List<String> taped,
    Built built,
    List<CoatDivision> coatDivisions,
    List<Stop> stops,
    List<StepHold> holds)
    implements AreaDetailsBuilder.With {
  public static final AreaDetails NONE =
      new AreaDetails(List.of(), Built.UNKNOWN, List.of(), List.of(), List.of());

  public AreaDetails {
    taped = List.copyOf(taped);
    coatDivisions = List.copyOf(coatDivisions);
    stops = List.copyOf(stops);
    holds = List.copyOf(holds);
  }

  /**
   * How it was built; what is not known is absent, which is not a no.
   *
   * @param year the building was built
   * @param postTensioned whether tendons under tension run in the slab
   * @param heated whether heating runs in the slab
   */
  public record Built(OptionalInt year, Optional<Boolean> postTensioned, Optional<Boolean> heated) {
    public static final Built UNKNOWN =
        new Built(OptionalInt.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * A line where a coat is divided.
   *
   * @param product id of the coat's product in the shop book; empty means every coat
   * @param line its points in order, at least 2
   */
  public record CoatDivision(String product, List<Spot> line) {
    public CoatDivision {
      line = List.copyOf(line);
    }
  }

  /** The same with all that has a place on the site moved. */
  public AreaDetails moved(Move how) {
    return withCoatDivisions(
        coatDivisions.stream()
            .map(d -> new CoatDivision(d.product(), d.line().stream().map(how::spot).toList()))
            .toList());
  }
}
