package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.units.Quantity;
import slabwright.work.AreaWork;
import slabwright.work.book.Figure;
import slabwright.work.coat.Batches;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Kits;
import slabwright.work.prep.PrepPlan;
import slabwright.work.prep.PrepStep;

/** Prep steps, coats, kits, batches, filler and bags of one floor area, as tables. */
final class WorkQuantities {
  private final AreaWork work;
  private final SheetContext context;

  WorkQuantities(AreaWork work, SheetContext context) {
    this.work = work;
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    QuantitiesSheet.section(blocks, "Prep, step by step", prep(work.prep()));
    if (!work.prep().steps().isEmpty()) {
      blocks.add(new Prose(work.prep().bond().sentence()));
      blocks.add(new Gap(3));
    }
    blocks.addAll(new TopQuantities(work.tops(), context).blocks());
    QuantitiesSheet.section(blocks, "Coats", coats());
    QuantitiesSheet.section(blocks, "Kits to buy", kits());
    QuantitiesSheet.section(blocks, "Batches of one coat", batches());
    QuantitiesSheet.section(blocks, "Filler and dust", filler());
    return blocks;
  }

  private Table prep(PrepPlan prep) {
    List<List<Cell>> rows = new ArrayList<>();
    for (PrepStep s : prep.steps()) {
      rows.add(
          List.of(
              Cell.of(s.name()),
              Cell.of(context.bareArea(s.machine())),
              Cell.of(s.machineTime().text(Words::time)),
              Cell.of(context.bareArea(s.hand())),
              Cell.of(s.handTime().text(Words::time))));
    }
    return Table.of(
        List.of(
            Column.words("step"),
            Column.number("machine, " + context.areaUnit()),
            Column.number("time"),
            Column.number("hand, " + context.areaUnit()),
            Column.number("time")),
        rows);
  }

  private Table coats() {
    List<List<Cell>> rows = new ArrayList<>();
    for (CoatPlan c : work.coats()) {
      rows.add(
          List.of(
              Cell.of(c.product().label()),
              Cell.of(Integer.toString(c.job().coats())),
              Cell.of(context.bareArea(c.job().mm2())),
              Cell.of(c.totalVolume().text(this::volume)),
              Cell.of(c.coatTime().text(Words::time))));
    }
    return Table.of(
        List.of(
            Column.words("product"),
            Column.number("coats"),
            Column.number(context.areaUnit()),
            Column.number("in all"),
            Column.number("a coat takes")),
        rows);
  }

  private Table kits() {
    List<List<Cell>> rows = new ArrayList<>();
    for (CoatPlan c : work.coats()) {
      rows.add(List.of(Cell.of(c.product().label()), Cell.of(kits(c.kits()))));
    }
    if (work.prep().filler().mm3() > 0) {
      rows.add(
          List.of(Cell.of("joint and crack filler"), Cell.of(kits(work.prep().filler().kits()))));
    }
    return Table.of(List.of(Column.words("product"), Column.number("kits")), rows);
  }

  private String kits(Figure<Kits> kits) {
    return kits.text(
        k ->
            k.lines().stream()
                .map(l -> l.count() + " × " + volume(l.kit().mm3()))
                .collect(Collectors.joining(" + ")));
  }

  private Table batches() {
    List<List<Cell>> rows = new ArrayList<>();
    for (CoatPlan c : work.coats()) {
      if (c.batches().isKnown()) {
        c.mixed().ifPresent(b -> rows.add(batch(c, b)));
      } else {
        String why = c.batches().text(b -> "");
        rows.add(List.of(Cell.of(c.product().label()), Cell.of("–"), Cell.of(why)));
      }
    }
    return Table.of(
        List.of(Column.words("product"), Column.number("batches"), Column.words("each")), rows);
  }

  private List<Cell> batch(CoatPlan c, Batches b) {
    Batches.Batch first = b.list().get(0);
    return List.of(
        Cell.of(c.product().label()),
        Cell.of(Integer.toString(b.list().size())),
        Cell.of(
            volume(first.mixed())
                + ", "
                + context.area(first.area())
                + ", "
                + Words.time(first.laying())));
  }

  private Table filler() {
    List<List<Cell>> rows = new ArrayList<>();
    if (work.prep().filler().mm3() > 0) {
      rows.add(List.of(Cell.of("gaps to fill"), Cell.of(volume(work.prep().filler().mm3()))));
    }
    rows.add(
        List.of(
            Cell.of("dust taken off"),
            Cell.of(work.prep().dust().text(kg -> Quantity.number(kg, 1) + " kg"))));
    rows.add(List.of(Cell.of("vacuum bags"), Cell.of(work.bags().text(n -> n.toString()))));
    return Table.of(List.of(Column.words(""), Column.number("")), rows);
  }

  private String volume(double mm3) {
    return Quantity.volume(mm3, context.units());
  }
}
