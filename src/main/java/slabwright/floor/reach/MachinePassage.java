package slabwright.floor.reach;

import java.util.Optional;
import slabwright.floor.MachineReach;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Machine;

/**
 * Whether a machine gets through one place.
 *
 * @param doorway which one; empty for a gap or a bend
 * @param where its middle, in the site's frame
 * @param across the narrowest line over it
 * @param width that is free there, mm
 * @param spare what is left over, mm; negative for what is missing. Of a doorway or gap it is width
 *     less body and passing clearance at both sides; of a bend the longest body of its width that
 *     gets round, less the machine's length
 */
public record MachinePassage(
    Machine machine,
    Kind kind,
    Optional<Doorway> doorway,
    Vec where,
    Line across,
    double width,
    double spare) {
  /** What kind of place. */
  public enum Kind {
    DOORWAY,
    GAP,
    BEND
  }

  static MachinePassage of(Machine machine, Optional<Doorway> doorway, Line across, double width) {
    Vec from = across.points().get(0);
    Vec to = across.points().get(across.points().size() - 1);
    return new MachinePassage(
        machine,
        doorway.isPresent() ? Kind.DOORWAY : Kind.GAP,
        doorway,
        from.towards(to, 0.5),
        across,
        width,
        width - machine.passage());
  }

  /** Whether the machine gets through; a place just as wide as it needs lets it. */
  public boolean fits() {
    return spare >= -MachineReach.FIT;
  }
}
