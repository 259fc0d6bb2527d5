package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.ColumnLayout;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Words;
import slabwright.units.Message;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayBars;
import slabwright.work.days.DayPlan;

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
            "6",
            "Day plan",
            plan.dated()
                ? "One calendar for the crew; drying and recoat windows at the temperatures on the"
                    + " plan"
                : "No start date is on the plan: days are counted from a Monday",
            "",
            Optional.empty(),
            List.of());
    Optional<DayPlan> days = plan.days().maybe();
    if (days.isEmpty()) {
      String why = context.words().say(plan.days().text(d -> ""));
      return ColumnPages.of(
          context.page(),
          draft,
          List.of(new Heading("There is no day plan yet"), new Paragraph(why), notice()));
    }
    return pages(draft, days.get());
  }

  private List<PageDraft> pages(PageDraft draft, DayPlan days) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new DayChart(DayBars.of(days), plan.dated(), context.words()));
    blocks.add(
        new Paragraph(
            context.words().say(together())
                + " "
                + context.words().say(WorkPlan.NOTICE)
                + " "
                + context.words().say(plan.book().origin())));
    plan.table()
        .maybe()
        .ifPresent(t -> blocks.addAll(new StepList(t, plan.dated(), context.words()).blocks()));
    List<PageDraft> drafts = new ArrayList<>();
    for (List<Ink> inks : ColumnLayout.whole(context.page(), 1, blocks)) {
      drafts.add(drafts.isEmpty() ? draft.withInks(inks) : draft.continued(inks));
    }
    return drafts;
  }

  private Message together() {
    return plan.table()
        .text(
            t ->
                "From %s to %s; %s of people in all."
                    .formatted(
                        Words.moment(t.begins(), plan.dated()),
                        Words.moment(t.ends(), plan.dated()),
                        Words.time(t.personTime())));
  }

  private Block notice() {
    return new CautionBlock("Estimate", context.words().say(WorkPlan.NOTICE));
  }
}
