package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slabwright.shape.Line;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.Spot;

/** Marks that are lines or places, counted by kind. */
final class MarkCounts {
  private final FloorArea area;
  private final SheetContext context;

  MarkCounts(FloorArea area, SheetContext context) {
    this.area = area;
    this.context = context;
  }

  /** How many of a kind, and how long together. */
  private record Tally(int count, double length) {
    Tally plus(Tally o) {
      return new Tally(count + o.count, length + o.length);
    }
  }

  Table table() {
    Map<MarkType, Tally> tallies = new TreeMap<>();
    for (Mark m : area.marks()) {
      if (m.form() instanceof Form.Trace t) {
        Line line = new Line(t.path().stream().map(Spot::vec).toList());
        tallies.merge(m.kind().type(), new Tally(1, line.length()), Tally::plus);
      } else if (m.form() instanceof Form.Place) {
        tallies.merge(m.kind().type(), new Tally(1, 0), Tally::plus);
      }
    }
    List<List<Cell>> rows = new ArrayList<>();
    tallies.forEach(
        (type, t) ->
            rows.add(
                List.of(
                    Cell.of(type.word()),
                    Cell.of(Integer.toString(t.count())),
                    Cell.of(t.length() > 0 ? context.length(t.length()) : ""))));
    return Table.of(
        List.of(Column.words("mark"), Column.number("number"), Column.number("length")), rows);
  }
}
