package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.sheets.days.BatchTable;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Kits;

/** Prep steps, coats, kits, batches, filler and bags of one floor area, as tables. */
final class WorkQuantities {
  private final AreaWorkPlan work;
  private final SheetContext context;

  WorkQuantities(AreaWorkPlan work, SheetContext context) {
    this.work = work;
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>(new PrepQuantities(work, context).blocks());
    blocks.addAll(new TopQuantities(work.tops(), context).blocks());
    QuantitiesSheet.section(blocks, context.say("sheets.work-quantities.coats-heading"), coats());
    QuantitiesSheet.section(blocks, context.say("sheets.work-quantities.films"), films());
    QuantitiesSheet.section(blocks, context.say("sheets.work-quantities.kits-to-buy"), kits());
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

  private TableBlock coats() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (CoatPlan c : work.coats()) {
      rows.add(
          List.of(
              TableCell.of(c.product().label()),
              TableCell.of(Integer.toString(c.job().coats())),
              TableCell.of(context.bareArea(c.job().mm2())),
              TableCell.of(context.say(c.totalVolume().text(this::volume))),
              TableCell.of(context.say(c.coatTime().text(context.times()::duration)))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.work-quantities.product")),
            TableColumn.number(context.say("sheets.work-quantities.coats")),
            TableColumn.number(context.areaUnit()),
            TableColumn.number(context.say("sheets.work-quantities.in-all")),
            TableColumn.number(context.say("sheets.work-quantities.a-coat-takes"))),
        rows);
  }

  private TableBlock kits() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (CoatPlan c : work.coats()) {
      rows.add(List.of(TableCell.of(c.product().label()), TableCell.of(kits(c.kits()))));
    }
    if (work.prep().filler().mm3() > 0) {
      rows.add(
          List.of(
              TableCell.of(context.say("sheets.work-quantities.filler")),
              TableCell.of(kits(work.prep().filler().kits()))));
    }
    if (work.prep().levelling().fills()) {
      rows.add(
          List.of(
              TableCell.of(context.say("sheets.work-quantities.levelling-mortar")),
              TableCell.of(kits(work.prep().levelling().kits()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.work-quantities.product")),
            TableColumn.number(context.say("sheets.work-quantities.kits"))),
        rows);
  }

  private String kits(Figure<Kits> kits) {
    return context
        .words()
        .say(
            kits.text(
                k ->
                    k.lines().stream()
                        .map(l -> l.count() + " × " + volume(l.kit().mm3()))
                        .collect(Collectors.joining(" + "))));
  }

  private TableBlock films() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (CoatPlan c : work.coats()) {
      if (c.product().spread().solids().isKnown()) {
        rows.add(
            List.of(
                TableCell.of(c.product().label()),
                TableCell.of(context.words().say(c.film().text(f -> thickness(f.wet())))),
                TableCell.of(context.words().say(c.film().text(f -> thickness(f.dry())))),
                TableCell.of(c.product().spread().gritPerVolume().isKnown() ? grit(c) : "")));
      }
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.work-quantities.product")),
            TableColumn.number(context.say("sheets.work-quantities.wet")),
            TableColumn.number(context.say("sheets.work-quantities.dry")),
            TableColumn.number(context.say("sheets.work-quantities.grit"))),
        rows);
  }

  private String grit(CoatPlan c) {
    return context.words().say(c.grit().text(kg -> RateFormat.mass(kg, context.units())));
  }

  private String thickness(double mm) {
    return context.units() == UnitSystem.FEET_INCHES
        ? QuantityFormat.number(mm / 0.0254, 1) + " mil"
        : QuantityFormat.number(mm * 1000, 0) + " µm";
  }

  private String volume(double mm3) {
    return QuantityFormat.volume(mm3, context.units());
  }
}
