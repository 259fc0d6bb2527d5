package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.drawing.Ink;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.ColumnLayout;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.work.Presence;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayBars;
import slabwright.work.days.DayPlan;
import slabwright.work.days.DayTable;
import slabwright.work.days.PersonRota;
import slabwright.work.stop.JobStop;

/** Sheet 6: what happens on which day, as bars and as a list. */
public final class DayPlanSheet {
  private final WorkPlan plan;
  private final SheetContext context;

  public DayPlanSheet(WorkPlan plan, SheetContext context) {
    this.plan = plan;
    this.context = context;
  }

  public List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.day-plan-sheet.title"),
            plan.dated()
                ? context.say("sheets.day-plan-sheet.dated")
                : context.say("sheets.day-plan-sheet.not-dated"),
            "",
            Optional.empty(),
            List.of());
    Optional<DayPlan> days = plan.days().maybe();
    if (days.isEmpty()) {
      return plan.outlook().canStart() ? none(draft) : pages(draft, List.of());
    }
    return pages(draft, bars(days.get()));
  }

  private List<PageDraft> none(PageDraft draft) {
    String why = context.say(plan.days().text(d -> ""));
    return ColumnPages.of(
        context,
        draft,
        List.of(
            new Heading(context.say("sheets.day-plan-sheet.no-day-plan")),
            new Paragraph(why),
            notice()));
  }

  private List<Block> bars(DayPlan days) {
    DayTable table = DayTable.of(days);
    List<Block> blocks = new ArrayList<>();
    blocks.add(new DayChart(DayBars.of(days, table), plan.dated(), context));
    blocks.add(
        new Paragraph(
            together(days, table)
                + " "
                + context.say(WorkPlan.NOTICE)
                + " "
                + context.say(plan.book().origin())));
    blocks.addAll(new CrewBlocks(plan, days, context).blocks());
    blocks.addAll(new ReadingLines(plan, days, context).blocks());
    PersonRota rota = PersonRota.of(days);
    blocks.addAll(new StepList(table, plan.dated(), rota, context).blocks());
    return blocks;
  }

  /** What stands against the job first; without dates the order of the steps. */
  private List<PageDraft> pages(PageDraft draft, List<Block> bars) {
    OutlookBlocks outlook = new OutlookBlocks(plan, Optional.empty(), context);
    List<Block> blocks = new ArrayList<>(outlook.blocks());
    List<JobStop> stops = plan.areas().stream().flatMap(a -> a.stops().stream()).toList();
    blocks.addAll(new StopTable(stops, context).blocks());
    if (bars.isEmpty()) {
      blocks.add(
          new Paragraph(context.say(WorkPlan.NOTICE) + " " + context.say(plan.book().origin())));
      blocks.addAll(outlook.order());
    }
    blocks.addAll(bars);
    List<PageDraft> drafts = new ArrayList<>();
    for (List<Ink> inks : ColumnLayout.whole(context.page(), 1, blocks)) {
      drafts.add(drafts.isEmpty() ? draft.withInks(inks) : draft.continued(inks, context.words()));
    }
    return drafts;
  }

  private String together(DayPlan days, DayTable table) {
    Presence here = Presence.of(days, plan.book());
    String unsaid =
        here.unsaid().stream()
            .map(context.words()::say)
            .distinct()
            .collect(Collectors.joining("; "));
    return context.say(
        "sheets.day-plan-sheet.together",
        context.times().from(table.begins(), plan.dated()),
        context.times().from(table.ends(), plan.dated()),
        context.times().works(here.steps()),
        context.times().works(here.present()),
        unsaid.isEmpty()
            ? context.say("sheets.day-plan-sheet.all-counted")
            : context.say("sheets.day-plan-sheet.not-counted", unsaid));
  }

  private Block notice() {
    return new CautionBlock(
        context.say("sheets.day-plan-sheet.estimate"), context.say(WorkPlan.NOTICE));
  }
}
