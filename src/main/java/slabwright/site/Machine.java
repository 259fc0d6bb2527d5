package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import slabwright.units.Length;

/**
 * A grinding machine.
 *
 * @param body width of the body, B
 * @param grinding width of the grinding head, G, at most B
 * @param clearance kept to everything at each side, c
 */
@RecordBuilder
public record Machine(
    String id, String name, Length body, Length grinding, Length clearance, Travel travel)
    implements MachineBuilder.With {
  /** A machine of which nothing is known for its way through the building. */
  public Machine(String id, String name, Length body, Length grinding, Length clearance) {
    this(id, name, body, grinding, clearance, Travel.UNKNOWN);
  }

  /**
   * What it needs to get to its floor.
   *
   * @param length of the body
   * @param passing clearance it needs at each side to roll through
   */
  public record Travel(Optional<Length> length, Optional<Length> passing) {
    public static final Travel UNKNOWN = new Travel(Optional.empty(), Optional.empty());

    public Travel withLength(Optional<Length> v) {
      return new Travel(v, passing);
    }

    public Travel withPassing(Optional<Length> v) {
      return new Travel(length, v);
    }
  }

  /**
   * What a machine needs at each side to roll through when nobody said: 12 mm (common practice, no
   * source).
   */
  private static final Length PASSING = Length.mm(12);

  /** What it needs at each side to roll through a doorway or gap, p. */
  public Length passing() {
    return travel.passing().orElse(PASSING);
  }

  /** The narrowest doorway or gap that it rolls through, B + 2 p, in mm. */
  public double passage() {
    return body.mm() + 2 * passing().mm();
  }

  /** The strip it leaves along a straight wall, (B − G)/2 + c, in mm. */
  public double strip() {
    return (body.mm() - grinding.mm()) / 2 + clearance.mm();
  }
}
