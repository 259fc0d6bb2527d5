package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.RateFormat;
import slabwright.work.top.TopPass;
import slabwright.work.top.TopPlan;
import slabwright.work.top.TopTakeoff;

/** Tops and steps: what is ground on each, grit by grit, hours apart from the floor's. */
final class TopQuantities {
  private final List<TopPlan> jobs;
  private final SheetContext context;

  TopQuantities(List<TopPlan> jobs, SheetContext context) {
    this.jobs = jobs;
    this.context = context;
  }

  /** Nothing for a floor area without tops and steps. */
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    if (jobs.isEmpty()) {
      return blocks;
    }
    QuantitiesSheet.section(blocks, context.say("sheets.top-quantities.tops"), feet());
    QuantitiesSheet.section(blocks, context.say("sheets.top-quantities.grits"), passes());
    String treads =
        jobs.stream()
            .map(TopPlan::foot)
            .filter(f -> f.steps() > 1)
            .map(this::treads)
            .collect(Collectors.joining(" "));
    jobs.stream()
        .filter(j -> !j.time().isKnown())
        .forEach(
            j ->
                blocks.add(
                    new Paragraph(
                        context.say(
                            "sheets.top-quantities.not-known",
                            j.foot().name(),
                            j.time().text(context.times()::duration)))));
    blocks.add(
        new Paragraph(
            (treads + " " + context.say(TopPlan.LEFT_OUT) + " " + context.say(TopPlan.CAUTION))
                .strip()));
    blocks.add(new Gap(3));
    return blocks;
  }

  private TableBlock feet() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (TopPlan job : jobs) {
      TopTakeoff foot = job.foot();
      rows.add(
          List.of(
              TableCell.of(foot.name()),
              TableCell.of(context.bareArea(foot.face())),
              TableCell.of(context.length(foot.edgeLength())),
              TableCell.of(context.length(foot.thickness())),
              TableCell.of(job.time().maybe().map(context.times()::duration).orElse("–")),
              TableCell.of(
                  job.dust().maybe().map(kg -> RateFormat.mass(kg, context.units())).orElse("–"))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.top-quantities.top-or-steps")),
            TableColumn.number(context.say("sheets.top-quantities.faces-in", context.areaUnit())),
            TableColumn.number(context.say("sheets.top-quantities.edges")),
            TableColumn.number(context.say("sheets.top-quantities.thick")),
            TableColumn.number(context.say("sheets.top-quantities.time")),
            TableColumn.number(context.say("sheets.top-quantities.dust"))),
        rows);
  }

  private TableBlock passes() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (TopPlan job : jobs) {
      for (TopPass pass : job.passes()) {
        rows.add(
            List.of(
                TableCell.of(job.foot().name()),
                TableCell.of(pass.grit()),
                TableCell.of(context.say(pass.face().text(context.times()::duration))),
                TableCell.of(context.say(pass.edge().text(context.times()::duration)))));
      }
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.top-quantities.top-or-steps")),
            TableColumn.narrow(context.say("sheets.top-quantities.grit")),
            TableColumn.number(context.say("sheets.top-quantities.faces")),
            TableColumn.number(context.say("sheets.top-quantities.edges"))),
        rows);
  }

  private String treads(TopTakeoff foot) {
    return context.say(
        "sheets.top-quantities.treads",
        foot.name(),
        foot.steps(),
        context.length(foot.tread()),
        context.length(foot.nosing()));
  }
}
