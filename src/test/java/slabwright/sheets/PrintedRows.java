package slabwright.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import slabwright.drawing.Text;
import slabwright.sheets.page.PrintedPage;

/** The rows of printed tables by their label. */
record PrintedRows(List<PrintedPage> pages) {
  /** Two lines are one row when they stand this near, in mm. */
  private static final double SAME_ROW = 0.1;

  /** What stands right of the label in its row, for each time that the label is printed. */
  List<List<String>> rightOf(String label, int values) {
    return rows(t -> t.equals(label) || t.startsWith(label + " "), values);
  }

  /** The same where a label may go on in further lines: its first line is enough. */
  List<List<String>> rightOfWrapped(String label, int values) {
    return rows(t -> t.equals(label) || (t.length() > 9 && label.startsWith(t + " ")), values);
  }

  private List<List<String>> rows(Predicate<String> isLabel, int values) {
    List<List<String>> rows = new ArrayList<>();
    for (PrintedPage page : pages) {
      List<Text> all =
          page.drawing().plain().stream()
              .filter(Text.class::isInstance)
              .map(Text.class::cast)
              .filter(t -> !t.words().isBlank())
              .toList();
      for (Text t : all) {
        if (isLabel.test(t.words())) {
          rows.add(
              all.stream()
                  .filter(o -> o.at().x() > t.at().x() && !o.equals(t))
                  .filter(o -> Math.abs(o.at().y() - t.at().y()) < SAME_ROW)
                  .sorted(Comparator.comparingDouble(o -> o.at().x()))
                  .map(o -> o.words().replace('\u00a0', ' '))
                  .limit(values)
                  .toList());
        }
      }
    }
    return rows;
  }
}
