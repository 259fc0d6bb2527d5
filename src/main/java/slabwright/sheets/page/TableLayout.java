package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Draws the rows of one table in columns of settled widths. */
final class TableLayout {
  private final TableBlock table;
  private final TypeSizes type;
  private final double width;
  private final List<Double> widths;

  private TableLayout(TableBlock table, TypeSizes type, double width) {
    this.table = table;
    this.type = type;
    this.width = width;
    this.widths = TableColumnWidths.of(table, type, width);
  }

  static TableLayout of(TableBlock table, TypeSizes type, double width) {
    return new TableLayout(table, type, width);
  }

  Slice head() {
    List<TableCell> heads = new ArrayList<>();
    table.columns().forEach(c -> heads.add(TableCell.of(c.head())));
    Lines lines = lines(heads, type.small());
    double height = 2.4 * type.k() + lines.rows() * type.leading() * 0.85;
    List<Ink> inks = new ArrayList<>(lines.inks(2.9 * type.k(), type.leading() * 0.85));
    inks.add(rule(height, 0.4));
    return new Slice(height, true, inks);
  }

  Slice of(List<TableCell> cells, boolean keep) {
    return row(cells, keep, type.body(), 0.12, Palette.RULE);
  }

  Slice total(List<TableCell> cells) {
    Slice row = row(cells, false, type.strong(), 0, Palette.RULE);
    List<Ink> inks = new ArrayList<>(row.inks());
    inks.add(rule(0, 0.4));
    return new Slice(row.height(), false, inks);
  }

  private Slice row(
      List<TableCell> cells,
      boolean keep,
      TextStyle style,
      double rule,
      slabwright.drawing.Colour c) {
    Lines lines = lines(cells, style);
    double k = type.k();
    double height = Math.max(lines.rows() * type.leading() + 2.2 * k, lines.least());
    List<Ink> inks = new ArrayList<>(lines.inks(4.35 * k, type.leading()));
    if (rule > 0) {
      inks.add(Stroke.line(Pen.of(rule, c), new Vec(0, height), new Vec(width, height)));
    }
    return new Slice(height, keep, inks);
  }

  private Stroke rule(double y, double weight) {
    return Stroke.line(Pen.of(weight, Palette.INK), new Vec(0, y), new Vec(width, y));
  }

  private Lines lines(List<TableCell> cells, TextStyle style) {
    return new Lines(cells, style);
  }

  /** The cells of one row, wrapped. */
  private final class Lines {
    private final List<TableCell> cells;
    private final TextStyle style;
    private final List<List<String>> wrapped = new ArrayList<>();

    Lines(List<TableCell> cells, TextStyle style) {
      this.cells = cells;
      this.style = style;
      for (int i = 0; i < cells.size(); i++) {
        wrapped.add(
            cells.get(i) instanceof TableCell.Words w
                ? TextMeasure.wrap(w.words(), styled(w), widths.get(i) + 0.01)
                : List.of(""));
      }
    }

    int rows() {
      return wrapped.stream().mapToInt(List::size).max().orElse(1);
    }

    double least() {
      return cells.stream().anyMatch(TableCell.Swatch.class::isInstance) ? 8.6 * type.k() : 0;
    }

    private TextStyle styled(TableCell.Words w) {
      return w.bold() ? new TextStyle(style.size(), true, style.colour(), style.measure()) : style;
    }

    List<Ink> inks(double baseline, double leading) {
      List<Ink> inks = new ArrayList<>();
      double first = least() > 0 && rows() == 1 ? baseline + 0.9 * type.k() : baseline;
      double x = 0;
      for (int i = 0; i < cells.size(); i++) {
        inks.addAll(cell(i, x, first, leading));
        x += widths.get(i) + TableColumnWidths.GAP * type.k();
      }
      return inks;
    }

    private List<Ink> cell(int i, double x, double baseline, double leading) {
      double k = type.k();
      double middle = baseline - 1.12 * k;
      TableCell cell = cells.get(i);
      if (cell instanceof TableCell.Words w) {
        return words(i, w, x, baseline, leading);
      } else if (cell instanceof TableCell.Ringed n) {
        double ring = type.ring(n.words(), 4.8);
        return List.of(Symbol.number(new Vec(x + ring / 2, middle), n.words(), ring));
      } else if (cell instanceof TableCell.Swatch s) {
        double top = middle - 2.6 * k;
        Ring box = Ring.rectangle(x, top, x + 11 * k, top + 5.2 * k);
        return s.look().on(List.of(box));
      }
      return List.of(
          Symbol.of(Symbol.Kind.TICK_BOX, new Vec(x + 2 * k, middle), 4 * k, Palette.INK));
    }

    private List<Ink> words(int i, TableCell.Words w, double x, double baseline, double leading) {
      List<Ink> inks = new ArrayList<>();
      boolean end = table.columns().get(i).end();
      double y = baseline;
      for (String line : wrapped.get(i)) {
        Vec at = new Vec(end ? x + widths.get(i) : x, y);
        inks.add(end ? Text.end(at, line, styled(w)) : Text.start(at, line, styled(w)));
        y += leading;
      }
      return inks;
    }
  }
}
