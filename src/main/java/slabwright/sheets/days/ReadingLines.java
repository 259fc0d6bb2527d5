package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.site.job.CoatReading;
import slabwright.units.QuantityFormat;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;

/** A line for each coat to write the readings of its day down; those on the plan are printed. */
record ReadingLines(WorkPlan plan, DayPlan days, SheetContext context) {
  private static final String LINE = "__________";

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    List<ScheduledStep> coats = days.steps().stream().filter(ReadingLines::isCoat).toList();
    if (!coats.isEmpty()) {
      blocks.add(new Heading(context.say("sheets.reading-lines.title")));
      blocks.add(table(coats));
      blocks.add(new Paragraph(context.say("sheets.reading-lines.how")));
      blocks.add(new Gap(3));
    }
    return blocks;
  }

  private static boolean isCoat(ScheduledStep s) {
    StepKind kind = s.task().type().kind();
    return kind == StepKind.COAT || kind == StepKind.MIST_COAT;
  }

  private TableBlock table(List<ScheduledStep> coats) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (ScheduledStep s : coats) {
      Optional<CoatReading> r = reading(s);
      rows.add(
          List.of(
              TableCell.of(context.say(s.task().name()) + " · " + s.task().area()),
              TableCell.of(context.times().day(s.start(), plan.dated())),
              TableCell.of(degrees(r.map(CoatReading::slabC))),
              TableCell.of(degrees(r.map(CoatReading::airC))),
              TableCell.of(degrees(r.map(CoatReading::dewPointC))),
              TableCell.of(r.map(CoatReading::by).filter(b -> !b.isEmpty()).orElse(LINE))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.reading-lines.coat")),
            TableColumn.narrow(context.say("sheets.crew-blocks.day")),
            TableColumn.number(context.say("sheets.reading-lines.slab")),
            TableColumn.number(context.say("sheets.reading-lines.air")),
            TableColumn.number(context.say("sheets.reading-lines.dew-point")),
            TableColumn.number(context.say("sheets.reading-lines.by"))),
        rows);
  }

  /** The plan's reading for this coat's product on its day. */
  private Optional<CoatReading> reading(ScheduledStep s) {
    return plan.site().job().readings().stream()
        .filter(r -> s.task().type().isOn(r.area()))
        .filter(r -> r.at().toLocalDate().equals(s.start().toLocalDate()))
        .filter(r -> product(s).filter(r.product()::equals).isPresent())
        .findFirst();
  }

  private Optional<String> product(ScheduledStep s) {
    return plan.area(s.task().type().areaId())
        .flatMap(
            a ->
                a.coats().stream()
                    .filter(
                        c ->
                            s.task()
                                .type()
                                .coat()
                                .filter(n -> n.place() == c.job().place())
                                .isPresent())
                    .findFirst())
        .map(c -> c.product().id());
  }

  private String degrees(Optional<OptionalDouble> celsius) {
    OptionalDouble c = celsius.orElse(OptionalDouble.empty());
    return c.isPresent() ? QuantityFormat.temperature(c.getAsDouble(), context.units()) : LINE;
  }
}
