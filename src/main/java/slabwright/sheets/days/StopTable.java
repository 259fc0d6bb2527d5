package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.work.stop.JobStop;

/** What must be settled before work starts and how it stands; nothing where nothing is asked. */
public record StopTable(List<JobStop> stops, SheetContext context) {
  public StopTable {
    stops = List.copyOf(stops);
  }

  public List<Block> blocks() {
    if (stops.isEmpty()) {
      return List.of();
    }
    List<List<TableCell>> rows = new ArrayList<>();
    for (JobStop s : stops) {
      String standing = context.say(s.standing());
      rows.add(
          List.of(
              s.isOpen() ? new TableCell.Tick() : TableCell.of("✓"),
              TableCell.of(
                  context.say("sheets.stop-table.where-and-what", s.where(), s.question())),
              s.blocks() ? TableCell.bold(standing) : TableCell.of(standing)));
    }
    TableBlock table =
        TableBlock.of(
            List.of(
                TableColumn.narrow(""),
                TableColumn.narrow(context.say("sheets.stop-table.question")),
                TableColumn.words(context.say("sheets.stop-table.stands"))),
            rows);
    return List.of(new Heading(context.say("sheets.stop-table.title")), table, new Gap(3));
  }
}
