package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.drawing.Raster;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.packet.PrintedPhoto;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/** One or two photos beside each other, each with its words under it; never cut. */
record PhotoRow(List<Cell> cells) implements Block {
  private static final double GAP = 6;
  private static final double HIGHEST = 64;

  PhotoRow {
    cells = List.copyOf(cells);
  }

  /**
   * A photo with its words.
   *
   * @param gone what stands in its place where there is no picture
   */
  record Cell(Optional<PrintedPhoto.Pixels> pixels, String words, String gone) {}

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double wide = (width - GAP) / 2;
    double high = 0;
    for (Cell c : cells) {
      high = Math.max(high, box(c, wide).height());
    }
    List<Ink> inks = new ArrayList<>();
    double deepest = high;
    for (int i = 0; i < cells.size(); i++) {
      double x = i * (wide + GAP);
      inks.add(picture(cells.get(i), box(cells.get(i), wide), x, type));
      deepest = Math.max(deepest, words(inks, cells.get(i).words(), type.body(), x, high, wide));
    }
    return List.of(new Slice(deepest + 4, false, inks));
  }

  private static Bounds box(Cell c, double wide) {
    double aspect = c.pixels().map(PrintedPhoto.Pixels::aspect).orElse(1.5);
    double high = Math.min(HIGHEST, wide / aspect);
    return new Bounds(0, 0, Math.min(wide, high * aspect), high);
  }

  private static Ink picture(Cell c, Bounds box, double x, TypeSizes type) {
    Bounds at = new Bounds(x, 0, x + box.width(), box.height());
    return c.pixels()
        .<Ink>map(p -> new Raster(at, p.picture()))
        .orElseGet(
            () -> Text.start(new Vec(at.minX(), type.body().size() * 1.2), c.gone(), type.small()));
  }

  private static double words(
      List<Ink> inks, String said, TextStyle style, double x, double from, double wide) {
    double y = from + style.size() * 1.3;
    for (String line : TextMeasure.wrap(said, style, wide)) {
      inks.add(Text.start(new Vec(x, y), line, style));
      y += style.size() * 1.35;
    }
    return y - style.size() * 0.8;
  }
}
