package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWork;
import slabwright.work.book.Figure;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Kits;

/** Prep steps, coats, kits, batches, filler and bags of one floor area, as tables. */
final class WorkQuantities {
  private final AreaWork work;
  private final SheetContext context;

  WorkQuantities(AreaWork work, SheetContext context) {
    this.work = work;
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>(new PrepQuantities(work, context).blocks());
    blocks.addAll(new TopQuantities(work.tops(), context).blocks());
    QuantitiesSheet.section(blocks, "Coats", coats());
    QuantitiesSheet.section(blocks, "Film of one coat", films());
    QuantitiesSheet.section(blocks, "Kits to buy", kits());
    for (CoatPlan c : work.coats()) {
      batches(blocks, c);
    }
    blocks.addAll(new FillerQuantities(work, context).blocks());
    return blocks;
  }

  private void batches(List<Block> blocks, CoatPlan c) {
    List<Block> batches = new BatchTable(c, context).blocks();
    if (!batches.isEmpty()) {
      blocks.add(new Heading(c.product().label()));
      blocks.addAll(batches);
    }
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

  private Table films() {
    List<List<Cell>> rows = new ArrayList<>();
    for (CoatPlan c : work.coats()) {
      if (c.product().spread().solids().isKnown()) {
        rows.add(
            List.of(
                Cell.of(c.product().label()),
                Cell.of(c.film().text(f -> thickness(f.wet()))),
                Cell.of(c.film().text(f -> thickness(f.dry()))),
                Cell.of(c.product().spread().gritPerVolume().isKnown() ? grit(c) : "")));
      }
    }
    return Table.of(
        List.of(
            Column.words("product"),
            Column.number("wet"),
            Column.number("dry"),
            Column.number("grit, last coat")),
        rows);
  }

  private String grit(CoatPlan c) {
    return c.grit().text(kg -> Quantity.number(kg, 2) + " kg");
  }

  private String thickness(double mm) {
    return context.units() == UnitSystem.FEET_INCHES
        ? Quantity.number(mm / 0.0254, 1) + " mil"
        : Quantity.number(mm * 1000, 0) + " µm";
  }

  private String volume(double mm3) {
    return Quantity.volume(mm3, context.units());
  }
}
