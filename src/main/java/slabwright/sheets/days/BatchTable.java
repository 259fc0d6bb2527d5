package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.work.book.Figure;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.Batches;
import slabwright.work.coat.CoatPlan;

/** The batches of one coat: what is mixed, when, and as far as which lane it goes. */
public record BatchTable(CoatPlan coat, SheetContext context) {

  /** Nothing for a coat that is not mixed in batches; a caution where it can't be laid in time. */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    Figure<Optional<Batches>> batches = coat.batches();
    if (!batches.isKnown()) {
      blocks.add(
          new CautionBlock(
              context.say("sheets.batch-table.batches"), context.say(batches.text(b -> ""))));
    }
    coat.mixed()
        .ifPresent(
            b -> {
              blocks.add(new Heading(context.say("sheets.batch-table.batches-of-one-coat")));
              blocks.add(table(b));
              if (b.list().stream().anyMatch(coat::isLaidLate)) {
                blocks.add(
                    new CautionBlock(
                        context.say("sheets.batch-table.batches"),
                        context.say("sheets.batch-table.laid-late")));
              }
              blocks.add(new Paragraph(words(b)));
              blocks.add(new Gap(2));
            });
    return blocks;
  }

  private TableBlock table(Batches batches) {
    List<BatchLanes> lanes = coat.batchLanes();
    List<List<TableCell>> rows = new ArrayList<>();
    for (Batches.Batch b : batches.list()) {
      Optional<BatchLanes> where = lanes.stream().filter(l -> l.batch() == b.number()).findFirst();
      rows.add(
          List.of(
              TableCell.of(Integer.toString(b.number())),
              TableCell.of(where.map(l -> context.times().duration(l.begins())).orElse("")),
              TableCell.of(volume(b.mixed())),
              TableCell.of(volume(b.used())),
              TableCell.of(context.bareArea(b.area())),
              TableCell.of(context.times().duration(b.kept())),
              TableCell.of(where.map(l -> l.from() + "–" + l.to()).orElse(""))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(context.say("sheets.batch-table.batch")),
            TableColumn.number(context.say("sheets.batch-table.begun-at")),
            TableColumn.number(context.say("sheets.batch-table.mixed")),
            TableColumn.number(context.say("sheets.batch-table.used")),
            TableColumn.number(context.areaUnit()),
            TableColumn.number(context.say("sheets.batch-table.lays-in")),
            TableColumn.number(context.say("sheets.batch-table.lanes"))),
        rows);
  }

  private String words(Batches b) {
    Message open = coat.workingTime().text(context.times()::duration);
    Message mixing = coat.product().mixing().mixingTime().text(context.times()::duration);
    return context.say("sheets.batch-table.working-time", open, mixing, b.kits(), volume(b.kit()));
  }

  private String volume(double mm3) {
    return QuantityFormat.volume(mm3, context.units());
  }
}
