package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slabwright.floor.EdgeTally;
import slabwright.floor.FloorTakeoff;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;

/** Marks that are lines or places, counted by kind; lines as far as they run on the net floor. */
final class MarkCounts {
  private final FloorTakeoff takeoff;
  private final SheetContext context;

  MarkCounts(FloorTakeoff takeoff, SheetContext context) {
    this.takeoff = takeoff;
    this.context = context;
  }

  /** How many of a kind, and how long together. */
  private record Tally(int count, double length) {
    Tally plus(Tally o) {
      return new Tally(count + o.count, length + o.length);
    }
  }

  TableBlock table() {
    Map<MarkType, Tally> tallies = new TreeMap<>();
    for (EdgeTally.LineMarks l : takeoff.tally().lines()) {
      tallies.put(l.kind(), new Tally(l.count(), l.length()));
    }
    for (Mark m : takeoff.area().marks()) {
      if (m.form() instanceof Form.Place) {
        tallies.merge(m.kind().type(), new Tally(1, 0), Tally::plus);
      }
    }
    List<List<TableCell>> rows = new ArrayList<>();
    tallies.forEach(
        (type, t) ->
            rows.add(
                List.of(
                    TableCell.of(context.say(type.label())),
                    TableCell.of(Integer.toString(t.count())),
                    TableCell.of(t.length() > 0 ? context.length(t.length()) : ""))));
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.mark-counts.mark")),
            TableColumn.number(context.say("sheets.mark-counts.number")),
            TableColumn.number(context.say("sheets.mark-counts.length"))),
        rows);
  }
}
