package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayBars;
import slabwright.work.days.DayPlan;
import slabwright.work.days.OthersOut;
import slabwright.work.days.Placed;

/** Sheet 6: what happens on which day, as bars and as a list. */
final class DayPlanSheet {
  private final WorkPlan plan;
  private final SheetContext context;

  DayPlanSheet(WorkPlan plan, SheetContext context) {
    this.plan = plan;
    this.context = context;
  }

  List<Draft> drafts() {
    Draft draft =
        new Draft(
            "6",
            "Day plan",
            plan.dated()
                ? "One calendar for the crew; drying and recoat windows at the temperatures on the plan"
                : "No start date is on the plan: days are counted from a Monday",
            "",
            Optional.empty(),
            List.of());
    Optional<DayPlan> days = plan.days().maybe();
    if (days.isEmpty()) {
      String why = plan.days().text(d -> "");
      return ColumnPages.of(
          context.page(),
          draft,
          List.of(new Heading("There is no day plan yet"), new Prose(why), notice()));
    }
    return pages(draft, days.get());
  }

  private List<Draft> pages(Draft draft, DayPlan days) {
    List<Draft> drafts = new ArrayList<>();
    DayChart chart = new DayChart(DayBars.of(days), plan.dated());
    for (List<Ink> inks : Columns.whole(context.page(), 1, List.of(chart))) {
      drafts.add(drafts.isEmpty() ? draft.withInks(inks) : draft.continued(inks));
    }
    Draft list = draft.continued(List.of());
    drafts.addAll(ColumnPages.of(context.page(), list, blocks(days)));
    return drafts;
  }

  private List<Block> blocks(DayPlan days) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Together"));
    blocks.add(totals(days));
    blocks.add(new Prose(WorkPlan.NOTICE));
    blocks.add(new Prose(plan.book().origin()));
    blocks.add(new Gap(3));
    List<OthersOut> out = OthersOut.of(days);
    if (!out.isEmpty()) {
      blocks.add(new Heading("Other trades stay off"));
      blocks.add(others(out));
      blocks.add(new Gap(3));
    }
    blocks.add(new Heading("Step by step"));
    blocks.add(steps(days));
    return blocks;
  }

  private static Block notice() {
    return new Caution("Estimate", WorkPlan.NOTICE);
  }

  private Table totals(DayPlan days) {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(
        row("begins", Words.moment(days.firstDay().atTime(days.hours().from()), plan.dated())));
    rows.add(row("ends", Words.moment(days.end(), plan.dated())));
    rows.add(row("hours of people", Words.time(days.personTime())));
    return Table.of(List.of(Column.words(""), Column.number("")), rows);
  }

  private static List<Cell> row(String label, String value) {
    return List.of(Cell.of(label), Cell.of(value));
  }

  private Table others(List<OthersOut> out) {
    List<List<Cell>> rows = new ArrayList<>();
    for (OthersOut o : out) {
      rows.add(
          List.of(
              Cell.of(o.area() + ": " + o.reason()),
              Cell.of(Words.moment(o.span().start(), plan.dated())),
              Cell.of(Words.moment(o.span().end(), plan.dated()))));
    }
    return Table.of(
        List.of(Column.words("where and why"), Column.number("from"), Column.number("until")),
        rows);
  }

  private Table steps(DayPlan days) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Placed p : days.steps()) {
      String area = p.task().area().isEmpty() ? "" : " · " + p.task().area();
      rows.add(
          List.of(
              new Cell.Tick(),
              Cell.of(p.task().name() + area),
              Cell.of(Words.moment(p.start(), plan.dated())),
              Cell.of(Words.time(p.worked())),
              Cell.of(Integer.toString(p.task().people()))));
    }
    return Table.of(
        List.of(
            Column.narrow(""),
            Column.words("step"),
            Column.number("starts"),
            Column.number("takes"),
            Column.number("people")),
        rows);
  }
}
