package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.units.Quantity;
import slabwright.work.top.TopFoot;
import slabwright.work.top.TopJob;
import slabwright.work.top.TopPass;

/** Tops and steps: what is ground on each, grit by grit, hours apart from the floor's. */
final class TopQuantities {
  private final List<TopJob> jobs;
  private final SheetContext context;

  TopQuantities(List<TopJob> jobs, SheetContext context) {
    this.jobs = jobs;
    this.context = context;
  }

  /** Nothing for a floor area without tops and steps. */
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    if (jobs.isEmpty()) {
      return blocks;
    }
    QuantitiesSheet.section(blocks, "Tops and steps, apart from the floor", feet());
    QuantitiesSheet.section(blocks, "Tops and steps, grit by grit", passes());
    String treads =
        jobs.stream()
            .map(TopJob::foot)
            .filter(f -> f.steps() > 1)
            .map(this::treads)
            .collect(Collectors.joining());
    jobs.stream()
        .filter(j -> !j.time().isKnown())
        .forEach(j -> blocks.add(new Prose(j.foot().name() + ": " + j.time().text(Words::time))));
    blocks.add(new Prose(treads + TopJob.LEFT_OUT + " " + TopJob.CAUTION));
    blocks.add(new Gap(3));
    return blocks;
  }

  private Table feet() {
    List<List<Cell>> rows = new ArrayList<>();
    for (TopJob job : jobs) {
      TopFoot foot = job.foot();
      rows.add(
          List.of(
              Cell.of(foot.name()),
              Cell.of(context.bareArea(foot.face())),
              Cell.of(context.length(foot.edgeLength())),
              Cell.of(context.length(foot.thickness())),
              Cell.of(job.time().maybe().map(Words::time).orElse("–")),
              Cell.of(job.dust().maybe().map(kg -> Quantity.number(kg, 1) + " kg").orElse("–"))));
    }
    return Table.of(
        List.of(
            Column.words("top or steps"),
            Column.number("faces, " + context.areaUnit()),
            Column.number("edges"),
            Column.number("thick"),
            Column.number("time"),
            Column.number("dust")),
        rows);
  }

  private Table passes() {
    List<List<Cell>> rows = new ArrayList<>();
    for (TopJob job : jobs) {
      for (TopPass pass : job.passes()) {
        rows.add(
            List.of(
                Cell.of(job.foot().name()),
                Cell.of(pass.grit()),
                Cell.of(pass.face().text(Words::time)),
                Cell.of(pass.edge().text(Words::time))));
      }
    }
    return Table.of(
        List.of(
            Column.words("top or steps"),
            Column.narrow("grit"),
            Column.number("faces"),
            Column.number("edges")),
        rows);
  }

  private String treads(TopFoot foot) {
    return "%s: %d treads taken as %s deep and %s wide. "
        .formatted(
            foot.name(), foot.steps(), context.length(foot.tread()), context.length(foot.nosing()));
  }
}
