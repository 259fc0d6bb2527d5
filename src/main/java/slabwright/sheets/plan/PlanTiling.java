package slabwright.sheets.plan;

import java.util.List;
import java.util.Optional;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.View;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.page.Scale;
import slabwright.sheets.page.StandardScales;
import slabwright.units.UnitSystem;

/**
 * How a model fits a page's field: the scale, and the tiles where one page is too small.
 *
 * @param model the model's bounds, in the site's frame (y up) or a graphic's (y down)
 * @param field the room on one page
 * @param across number of tiles side by side
 * @param down number of tiles one above the other
 */
record PlanTiling(
    CoordinateFrame frame, Scale scale, Bounds model, Bounds field, int across, int down) {
  /** Paper that neighbouring tiles share, mm. */
  static final double SHARED = 14;

  /** The largest standard scale that leaves the margin (mm of paper) on every side. */
  static PlanTiling of(
      CoordinateFrame frame, Bounds model, Bounds field, double margin, UnitSystem units) {
    double w = field.width() - 2 * margin;
    double h = field.height() - 2 * margin;
    Scale scale = StandardScales.fitting(model.width(), model.height(), w, h, units);
    return at(scale, frame, model, field, margin);
  }

  private static PlanTiling at(
      Scale scale, CoordinateFrame frame, Bounds model, Bounds field, double margin) {
    return new PlanTiling(
        frame,
        scale,
        model,
        field,
        tiles(model.width() / scale.denominator() + 2 * margin, field.width()),
        tiles(model.height() / scale.denominator() + 2 * margin, field.height()));
  }

  /** On so many pages at most, at the largest standard scale for that; else at the smallest. */
  static PlanTiling onFew(
      CoordinateFrame frame,
      Bounds model,
      Bounds field,
      double margin,
      UnitSystem units,
      int most) {
    List<PlanTiling> all =
        StandardScales.of(units).stream().map(s -> at(s, frame, model, field, margin)).toList();
    return all.stream()
        .filter(p -> p.across() * p.down() <= most)
        .findFirst()
        .orElse(all.get(all.size() - 1));
  }

  /** One page at the largest of all standard scales; empty where none is small enough. */
  static Optional<PlanTiling> whole(
      CoordinateFrame frame, Bounds model, Bounds field, double margin, UnitSystem units) {
    double w = field.width() - 2 * margin;
    double h = field.height() - 2 * margin;
    return StandardScales.forWhole(model.width(), model.height(), w, h, units)
        .map(scale -> new PlanTiling(frame, scale, model, field, 1, 1));
  }

  private static int tiles(double length, double room) {
    return length <= room + 1e-6 ? 1 : (int) Math.ceil((length - SHARED) / (room - SHARED));
  }

  boolean tiled() {
    return across * down > 1;
  }

  /** The view of one tile; column and row count from the left and the top. */
  View view(int column, int row) {
    double x = field.middle().x() - (column - (across - 1) / 2.0) * (field.width() - SHARED);
    double y = field.middle().y() - (row - (down - 1) / 2.0) * (field.height() - SHARED);
    Vec at = new Vec(x, y);
    return frame == CoordinateFrame.SITE
        ? View.yUp(scale.denominator(), model.middle(), at)
        : View.yDown(scale.denominator(), model.middle(), at);
  }
}
