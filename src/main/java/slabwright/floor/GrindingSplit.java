package slabwright.floor;

import java.util.List;
import java.util.Map;
import slabwright.shape.Region;
import slabwright.units.SortedCopy;

/**
 * Who grinds what, with the trenches as they lie or once they are levelled. Machine and hand
 * together are the floor to be ground.
 *
 * @param reaches what each machine of the plan can do, the widest body first
 * @param machine what the machines grind between them
 * @param hand what is left to hand tools
 * @param pieces the hand work, piece by piece; crumbs under 1 mm² are left out
 * @param shares who does what floor, the widest body first
 * @param trenches hand work on each trench that shows, mm², by the id of its mark
 */
public record GrindingSplit(
    List<ReachedFloor> reaches,
    Region machine,
    Region hand,
    List<HandWorkPiece> pieces,
    List<MachineShare> shares,
    Map<String, Double> trenches) {
  public GrindingSplit {
    reaches = List.copyOf(reaches);
    shares = List.copyOf(shares);
    trenches = SortedCopy.of(trenches);
    pieces = List.copyOf(pieces);
  }

  /** The pieces of one kind. */
  public List<HandWorkPiece> pieces(HandWorkKind kind) {
    return pieces.stream().filter(p -> p.kind() == kind).toList();
  }

  /** Area of the hand work of one kind, mm². */
  public double handArea(HandWorkKind kind) {
    return pieces(kind).stream().mapToDouble(HandWorkPiece::area).sum();
  }
}
