package slabwright.sheets.plan;

import java.util.List;
import java.util.function.Consumer;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.View;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/**
 * A plan as large as the column allows, at no standard scale: to look at, not to measure from.
 *
 * @param frame whether the model's y runs up or down
 * @param model what is shown
 * @param height the most it may take, mm
 * @param margin left free around the model for words, mm
 */
public record OverviewBlock(
    CoordinateFrame frame, Bounds model, double height, double margin, Consumer<PlanComposer> draw)
    implements Block {
  /** A plan in the site's frame. */
  public OverviewBlock(Bounds model, double height, double margin, Consumer<PlanComposer> draw) {
    this(CoordinateFrame.SITE, model, height, margin, draw);
  }

  /** Site millimetres to one of paper in a column of the width. */
  public double denominator(double width) {
    return Math.max(model.width() / (width - 2 * margin), model.height() / (height - 2 * margin));
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double scale = denominator(width);
    double high = Math.min(height, model.height() / scale + 2 * margin);
    Bounds field = new Bounds(0, 0, width, high);
    Vec middle = new Vec(width / 2, high / 2);
    View view =
        frame == CoordinateFrame.SITE
            ? View.yUp(scale, model.middle(), middle)
            : View.yDown(scale, model.middle(), middle);
    PlanComposer sketch = new PlanComposer(view, field, type);
    draw.accept(sketch);
    return List.of(new Slice(high + 2, false, sketch.inks()));
  }
}
