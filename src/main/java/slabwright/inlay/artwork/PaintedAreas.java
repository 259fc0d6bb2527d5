package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Layer;

/** Painted shapes as the areas that show, in paint order: cut by their clips and masks. */
public final class PaintedAreas {
  private PaintedAreas() {}

  /**
   * The areas; what is clipped away altogether is left out. Where they are too much to be sorted
   * out there are none, and the reason.
   *
   * @param shapes strokes among them as their outlines
   * @param toMm to the outlines' frame
   * @param tolerance mm, of a curve
   */
  public static PaintedPage of(List<PaintedShape> shapes, AffineTransform toMm, double tolerance) {
    try {
      return new PaintedPage(areas(shapes, toMm, tolerance), Optional.empty());
    } catch (RefusedArtworkException tooMuch) {
      return new PaintedPage(List.of(), Optional.of(tooMuch.why()));
    }
  }

  private static List<DrawnOutline> areas(
      List<PaintedShape> shapes, AffineTransform toMm, double tolerance) {
    ShapeClipper clipping = new ShapeClipper(toMm, tolerance);
    List<DrawnOutline> areas = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      Layer layer = clipping.layer(i, shapes.get(i));
      if (!layer.rings().isEmpty()) {
        Optional<String> fill = Optional.of(shapes.get(i).hex());
        String as = shapes.get(i).as() == PaintedShape.As.STROKE ? DrawnOutlines.STROKES : "";
        areas.add(new DrawnOutline(layer.rings(), layer.rule(), fill, as));
      }
    }
    CrossingBudget.check(areas.stream().flatMap(a -> a.rings().stream()).toList());
    return areas;
  }
}
