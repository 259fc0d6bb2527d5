package slabwright.inlay.proof;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.inlay.artwork.CrossingBudget;
import slabwright.shape.Ring;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * Refuses a returned drawing that is too much before it is sorted out, which is done for each
 * stencil that it may show.
 */
final class DrawingBudget {
  /** Measured: so many are searched in 5 s. */
  private static final long MOST_OUTLINES = 10_000;

  private static final long MOST_CORNERS = 150_000;

  private DrawingBudget() {}

  /**
   * The drawing, if it is not too much.
   *
   * @param name what to call its file in sentences
   */
  static Result<ShopDrawing> checked(ShopDrawing drawing, String name) {
    return why(drawing)
        .map(m -> Result.<ShopDrawing>refused(Message.of("inlay.artwork.refused", name, m)))
        .orElseGet(() -> Result.ok(drawing));
  }

  /**
   * Fills are sorted out together and lines together, never one with the other, so that a file of
   * ours, which shows each edge both ways, may have each edge twice. What is painted was counted as
   * it was read.
   */
  private static Optional<Message> why(ShopDrawing drawing) {
    return Stream.of(true, false)
        .map(filled -> why(rings(drawing, filled)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Message> why(List<Ring> rings) {
    if (rings.size() > MOST_OUTLINES) {
      return Optional.of(Message.of("inlay.drawing-budget.too-many-outlines", MOST_OUTLINES));
    }
    return rings.stream().mapToLong(r -> r.points().size()).sum() > MOST_CORNERS
        ? Optional.of(Message.of("inlay.drawing-budget.too-many-corners", MOST_CORNERS))
        : CrossingBudget.tooMany(rings);
  }

  private static List<Ring> rings(ShopDrawing drawing, boolean filled) {
    return drawing.pieces().stream()
        .filter(p -> p.fill().isPresent() == filled)
        .flatMap(p -> p.rings().stream())
        .toList();
  }
}
