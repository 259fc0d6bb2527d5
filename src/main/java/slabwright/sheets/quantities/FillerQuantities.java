package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.work.AreaWorkPlan;
import slabwright.work.prep.FillerGap;
import slabwright.work.prep.FillerPlan;

/** Joints, cracks and spalls to fill, and the dust that fills the vacuum's bags. */
record FillerQuantities(AreaWorkPlan work, SheetContext context) {

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    FillerPlan filler = work.prep().filler();
    if (!filler.gaps().isEmpty()) {
      QuantitiesSheet.section(blocks, context.say("sheets.filler-quantities.filler"), gaps(filler));
    }
    List<Message> mixing = work.prep().mixingTold(context.units());
    if (!mixing.isEmpty()) {
      blocks.add(new Heading(context.say("sheets.filler-quantities.mixing")));
      mixing.forEach(t -> blocks.add(new Paragraph(context.words().say(t))));
    }
    QuantitiesSheet.section(blocks, context.say("sheets.filler-quantities.dust"), dust());
    return blocks;
  }

  private TableBlock gaps(FillerPlan filler) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (List<FillerGap> same : Crowds.of(filler.gaps(), FillerGap::kind)) {
      FillerGap g = same.get(0);
      rows.add(
          List.of(
              TableCell.of(
                  same.size() == 1
                      ? context.say(
                          "sheets.filler-quantities.name-and-kind", g.name(), g.kind().label())
                      : context.say(
                          "sheets.quantities-sheet.crowd", g.kind().label(), same.size())),
              TableCell.of(context.length(same.stream().mapToDouble(FillerGap::run).sum())),
              TableCell.of(
                  QuantityFormat.volume(
                      same.stream().mapToDouble(FillerGap::mm3).sum(), context.units()))));
    }
    return new TableBlock(
        List.of(
            TableColumn.words(context.say("sheets.filler-quantities.gap")),
            TableColumn.number(context.say("sheets.filler-quantities.run")),
            TableColumn.number(context.say("sheets.filler-quantities.volume"))),
        rows,
        List.of(
            TableCell.of(context.say("sheets.filler-quantities.all-gaps")),
            TableCell.of(""),
            TableCell.of(QuantityFormat.volume(filler.mm3(), context.units()))));
  }

  private TableBlock dust() {
    return TableBlock.of(
        List.of(TableColumn.words(""), TableColumn.number("")),
        List.of(
            List.of(
                TableCell.of(context.say("sheets.filler-quantities.off-the-floor")),
                TableCell.of(
                    context.say(
                        work.prep()
                            .dust()
                            .text(
                                kg ->
                                    kg == 0 ? nothing() : RateFormat.mass(kg, context.units()))))),
            List.of(
                TableCell.of(context.say("sheets.filler-quantities.bags")),
                TableCell.of(context.say(work.bags().text(n -> n))))));
  }

  /** No kilogram of dust: either none is raised, or nobody said how much shall be ground. */
  private String nothing() {
    return work.prep().chart().isPresent()
        ? context.say("sheets.filler-quantities.no-dust")
        : context.say("sheets.filler-quantities.no-exposure");
  }
}
