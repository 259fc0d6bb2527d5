package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Quantity;
import slabwright.work.book.Figure;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.Batches;
import slabwright.work.coat.CoatPlan;

/** The batches of one coat: what is mixed, when, and as far as which lane it goes. */
record BatchTable(CoatPlan coat, SheetContext context) {

  /** Nothing for a coat that is not mixed in batches; a caution where it can't be laid in time. */
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    Figure<Optional<Batches>> batches = coat.batches();
    if (!batches.isKnown()) {
      blocks.add(new Caution("Batches", batches.text(b -> "")));
    }
    coat.mixed()
        .ifPresent(
            b -> {
              blocks.add(new Heading("Batches of one coat"));
              blocks.add(table(b));
              blocks.add(new Prose(words(b)));
              blocks.add(new Gap(2));
            });
    return blocks;
  }

  private Table table(Batches batches) {
    List<BatchLanes> lanes = coat.batchLanes();
    List<List<Cell>> rows = new ArrayList<>();
    for (Batches.Batch b : batches.list()) {
      Optional<BatchLanes> where = lanes.stream().filter(l -> l.batch() == b.number()).findFirst();
      rows.add(
          List.of(
              Cell.of(Integer.toString(b.number())),
              Cell.of(where.map(l -> Words.time(l.begins())).orElse("")),
              Cell.of(volume(b.mixed())),
              Cell.of(volume(b.used())),
              Cell.of(context.bareArea(b.area())),
              Cell.of(Words.time(b.laying())),
              Cell.of(where.map(l -> l.from() + "–" + l.to()).orElse(""))));
    }
    return Table.of(
        List.of(
            Column.narrow("batch"),
            Column.number("begun at"),
            Column.number("mixed"),
            Column.number("used"),
            Column.number(context.areaUnit()),
            Column.number("lays in"),
            Column.number("lanes")),
        rows);
  }

  private String words(Batches b) {
    String open = coat.at(coat.product().mixing().workingTime()).text(Words::time);
    String mixing = coat.product().mixing().mixingTime().text(Words::time);
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
    return Quantity.volume(mm3, context.units());
  }
}
