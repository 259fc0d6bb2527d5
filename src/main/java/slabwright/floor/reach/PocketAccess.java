package slabwright.floor.reach;

import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.floor.HandWorkPiece;

/**
 * A pocket and the best way to it.
 *
 * @param pass its narrowest place; empty when no gap of 40 mm or more leads there
 * @param clearance that the plan's narrowest machine needs at either side to roll through, mm
 * @param bend that stops a machine which its width would let through; then there is no narrow pass
 */
public record PocketAccess(
    HandWorkPiece pocket,
    Optional<Bottleneck> pass,
    double clearance,
    Optional<MachinePassage> bend) {
  /** The widest body that would get through with that clearance, mm; empty when none would. */
  public OptionalDouble body() {
    double body = pass.map(p -> p.width() - 2 * clearance).orElse(0.0);
    return body > 0 ? OptionalDouble.of(body) : OptionalDouble.empty();
  }
}
