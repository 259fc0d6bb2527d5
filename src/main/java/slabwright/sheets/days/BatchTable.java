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
import slabwright.sheets.page.Words;
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
      blocks.add(new CautionBlock("Batches", context.words().say(batches.text(b -> ""))));
    }
    coat.mixed()
        .ifPresent(
            b -> {
              blocks.add(new Heading("Batches of one coat"));
              blocks.add(table(b));
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
              TableCell.of(where.map(l -> Words.time(l.begins())).orElse("")),
              TableCell.of(volume(b.mixed())),
              TableCell.of(volume(b.used())),
              TableCell.of(context.bareArea(b.area())),
              TableCell.of(Words.time(b.laying())),
              TableCell.of(where.map(l -> l.from() + "–" + l.to()).orElse(""))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow("batch"),
            TableColumn.number("begun at"),
            TableColumn.number("mixed"),
            TableColumn.number("used"),
            TableColumn.number(context.areaUnit()),
            TableColumn.number("lays in"),
            TableColumn.number("lanes")),
        rows);
  }

  private String words(Batches b) {
    String open =
        context.words().say(coat.at(coat.product().mixing().workingTime()).text(Words::time));
    String mixing = context.words().say(coat.product().mixing().mixingTime().text(Words::time));
    return "Each can be laid for "
        + open
        + " from the start of mixing at the temperature on the plan; mixing takes "
        + mixing
        + ". Begin to mix that long before. Times count from the first lane; "
        + b.kits()
        + " kits of "
        + volume(b.kit())
        + " are opened.";
  }

  private String volume(double mm3) {
    return QuantityFormat.volume(mm3, context.units());
  }
}
