package slabwright.work;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;

/** Where a crew leaves a floor it coats: the first way in, else a doorway, else an open edge. */
final class WayOut {
  private WayOut() {}

  static Optional<Vec> of(FloorArea area) {
    Optional<Vec> door =
        area.doorways().stream()
            .min(Comparator.comparing(d -> !d.wayIn()))
            .map(d -> middle(area, d));
    return door.isPresent() ? door : openEdge(area);
  }

  /** The middle of a doorway; on a curved piece, of the chord beside it. */
  static Vec middle(FloorArea area, Doorway d) {
    Vec a = corner(area, d.piece());
    Vec b = corner(area, d.piece() + 1);
    return a.plus(b.minus(a).unit().times(d.offset().mm() + d.width().mm() / 2));
  }

  private static Optional<Vec> openEdge(FloorArea area) {
    return IntStream.range(0, area.outline().size())
        .filter(i -> area.outline().get(i).kind() == PieceKind.OPEN_EDGE)
        .mapToObj(i -> corner(area, i).towards(corner(area, i + 1), 0.5))
        .findFirst();
  }

  private static Vec corner(FloorArea area, int index) {
    List<OutlinePiece> outline = area.outline();
    return outline.get(index % outline.size()).from().vec();
  }
}
