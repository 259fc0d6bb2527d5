package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/**
 * Squares to sketch on.
 *
 * @param square side of one, mm: a quarter inch or 5 mm
 * @param rows how many under each other
 */
record SketchGrid(double square, int rows) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    int columns = (int) Math.floor(width / square);
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i <= columns; i++) {
      lines.add(Line.of(new Vec(i * square, 0), new Vec(i * square, rows * square)));
    }
    for (int i = 0; i <= rows; i++) {
      lines.add(Line.of(new Vec(0, i * square), new Vec(columns * square, i * square)));
    }
    return List.of(
        new Slice(
            rows * square + 2, false, List.of(Stroke.lines(Pen.of(0.12, Palette.RULE), lines))));
  }
}
