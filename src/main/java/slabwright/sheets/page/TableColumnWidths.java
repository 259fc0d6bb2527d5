package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.TextMeasure;

/**
 * Shares a table's width out: every column what its widest field needs, the wide columns what is
 * left; when that is too little all columns shrink alike and their words wrap.
 */
final class TableColumnWidths {
  static final double GAP = 3;

  /** The share of the width that wide columns keep at least. */
  private static final double LEAST_WIDE = 0.3;

  private TableColumnWidths() {}

  static List<Double> of(TableBlock table, TypeSizes type, double width) {
    int n = table.columns().size();
    double room = width - GAP * type.k() * (n - 1);
    List<Double> natural = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      natural.add(natural(table, i, type));
    }
    double narrow = sum(table, natural, false);
    double wide = sum(table, natural, true);
    if (wide == 0) {
      return scaled(natural, Math.min(1, room / narrow));
    }
    double left = Math.max(room - narrow, Math.min(wide, LEAST_WIDE * room));
    List<Double> widths = new ArrayList<>();
    double shrink = shrink(table, natural, type, room - left);
    for (int i = 0; i < n; i++) {
      boolean isWide = table.columns().get(i).wide();
      widths.add(
          isWide
              ? natural.get(i) * left / wide
              : Math.max(natural.get(i) * shrink, least(table, i, type)));
    }
    keepWords(table, type, widths, room);
    return widths;
  }

  /**
   * No wide column is narrower than its widest word while another has room to give; then what is
   * too much comes off the wide ones alike.
   */
  private static void keepWords(
      TableBlock table, TypeSizes type, List<Double> widths, double room) {
    int n = widths.size();
    double over = widths.stream().mapToDouble(w -> w).sum() - room;
    double slack = 0;
    for (int i = 0; i < n; i++) {
      if (table.columns().get(i).wide()) {
        double least = Math.min(least(table, i, type), room);
        over += Math.max(0, least - widths.get(i));
        slack += Math.max(0, widths.get(i) - least);
        widths.set(i, Math.max(widths.get(i), least));
      }
    }
    if (over <= 1e-9) {
      return;
    }
    double give = Math.min(1, over / Math.max(slack, 1e-9));
    double wide = 0;
    for (int i = 0; i < n; i++) {
      if (table.columns().get(i).wide()) {
        double least = Math.min(least(table, i, type), room);
        widths.set(i, widths.get(i) - give * (widths.get(i) - least));
        wide += widths.get(i);
      }
    }
    double still = widths.stream().mapToDouble(w -> w).sum() - room;
    for (int i = 0; still > 1e-9 && i < n; i++) {
      if (table.columns().get(i).wide()) {
        widths.set(i, Math.max(widths.get(i) - still * widths.get(i) / wide, 0.1));
      }
    }
  }

  /** How much columns shrink that are not held by a word that can't be broken. */
  private static double shrink(
      TableBlock table, List<Double> natural, TypeSizes type, double room) {
    double shrink = 1;
    for (int round = 0; round < natural.size(); round++) {
      double held = 0;
      double free = 0;
      for (int i = 0; i < natural.size(); i++) {
        if (!table.columns().get(i).wide()) {
          double least = least(table, i, type);
          boolean isHeld = natural.get(i) * shrink <= least;
          held += isHeld ? least : 0;
          free += isHeld ? 0 : natural.get(i);
        }
      }
      shrink = free <= 0 ? shrink : Math.min(1, Math.max(0, room - held) / free);
    }
    return shrink;
  }

  /** The widest word of a column: no number is broken, or parted from its unit. */
  private static double least(TableBlock table, int column, TypeSizes type) {
    double widest = 0.1;
    for (List<TableCell> row : table.rows()) {
      widest = Math.max(widest, leastOf(row.get(column), type, false));
    }
    return table.total().isEmpty()
        ? widest
        : Math.max(widest, leastOf(table.total().get(column), type, true));
  }

  private static double leastOf(TableCell cell, TypeSizes type, boolean total) {
    if (cell instanceof TableCell.Words w) {
      return TextMeasure.pieces(w.words()).stream()
          .mapToDouble(
              word -> TextMeasure.width(word, total || w.bold() ? type.strong() : type.body()))
          .max()
          .orElse(0);
    }
    return cell(cell, type, total);
  }

  private static List<Double> scaled(List<Double> natural, double by) {
    return natural.stream().map(w -> w * by).toList();
  }

  private static double sum(TableBlock table, List<Double> natural, boolean wide) {
    double sum = 0;
    for (int i = 0; i < natural.size(); i++) {
      sum += table.columns().get(i).wide() == wide ? natural.get(i) : 0;
    }
    return sum;
  }

  private static double natural(TableBlock table, int column, TypeSizes type) {
    double widest = TextMeasure.width(table.columns().get(column).head(), type.small());
    for (List<TableCell> row : table.rows()) {
      widest = Math.max(widest, cell(row.get(column), type, false));
    }
    if (!table.total().isEmpty()) {
      widest = Math.max(widest, cell(table.total().get(column), type, true));
    }
    return Math.max(widest, 0.1);
  }

  private static double cell(TableCell cell, TypeSizes type, boolean total) {
    if (cell instanceof TableCell.Words w) {
      return TextMeasure.width(w.words(), total || w.bold() ? type.strong() : type.body());
    }
    if (cell instanceof TableCell.Ringed n) {
      return type.ring(n.words(), 4.8);
    }
    return (cell instanceof TableCell.Swatch ? 11 : 4) * type.k();
  }
}
