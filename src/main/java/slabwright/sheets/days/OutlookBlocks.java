package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.Message;
import slabwright.work.ClosedAir;
import slabwright.work.DayCheck;
import slabwright.work.HeldGroup;
import slabwright.work.HeldStep;
import slabwright.work.JobOutlook;
import slabwright.work.WorkPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;

/**
 * What has to be known before anything else: why the job can't start, which steps are held and what
 * frees them, and when floors are closed for vapour.
 *
 * @param area id of the only floor area it is about; empty for all
 */
public record OutlookBlocks(WorkPlan plan, Optional<String> area, SheetContext context) {
  private static final int MOST_FOLLOWERS = 12;

  private JobOutlook outlook() {
    return plan.outlook();
  }

  /** Nothing where nothing stands against the job. */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    if (!outlook().canStart()) {
      blocks.add(
          new CautionBlock(
              context.say("sheets.outlook.cannot-start"), context.say("sheets.outlook.no-dates")));
      outlook().cannotStart().stream()
          .map(context.words()::say)
          .distinct()
          .forEach(s -> blocks.add(new Paragraph("✕ " + s + ".")));
    }
    List<HeldStep> held = outlook().held().stream().filter(h -> isHere(h.area())).toList();
    if (!held.isEmpty()) {
      held(blocks, held);
    }
    List<ClosedAir> closed =
        outlook().closed().stream().filter(c -> isHere(c.area()) && c.span().isPresent()).toList();
    if (!closed.isEmpty()) {
      blocks.add(new Heading(context.say("sheets.outlook.closed")));
      blocks.add(closed(closed));
      blocks.add(new Gap(3));
    }
    List<DayCheck> checks = outlook().checks().stream().filter(c -> isHere(c.area())).toList();
    if (!checks.isEmpty()) {
      blocks.add(new Heading(context.say("sheets.outlook.checks")));
      checks.forEach(c -> blocks.add(new Paragraph("→ " + context.words().say(c.what()) + ".")));
      blocks.add(new Gap(3));
    }
    return blocks;
  }

  private boolean isHere(String id) {
    return area.map(id::equals).orElse(true);
  }

  private String sentences(List<Message> messages) {
    Set<String> said = new LinkedHashSet<>();
    messages.forEach(m -> said.add(context.words().say(m)));
    return String.join(". ", said) + ".";
  }

  private void held(List<Block> blocks, List<HeldStep> held) {
    blocks.add(new Heading(context.say("sheets.outlook.held")));
    List<List<TableCell>> rows = new ArrayList<>();
    for (HeldGroup h : HeldGroup.of(held)) {
      rows.add(
          List.of(
              TableCell.of("✕ " + context.words().say(h.why())),
              TableCell.of(sentences(h.worst().frees()))));
    }
    blocks.add(
        TableBlock.of(
            List.of(
                TableColumn.words(context.say("sheets.outlook.why")),
                TableColumn.words(context.say("sheets.outlook.frees"))),
            rows));
    List<String> after =
        held.stream().filter(h -> h.frees().isEmpty()).map(h -> name(h.step())).toList();
    if (!after.isEmpty()) {
      blocks.add(new Paragraph(context.say("sheets.outlook.followers", followers(after))));
    }
    blocks.add(new Gap(3));
  }

  /** By name as far as a person reads on. */
  private String followers(List<String> names) {
    String some = String.join("; ", names.subList(0, Math.min(names.size(), MOST_FOLLOWERS)));
    int more = names.size() - MOST_FOLLOWERS;
    return more > 0 ? context.say("sheets.outlook.more-followers", some, more) : some;
  }

  private String name(String stepId) {
    return outlook()
        .order()
        .maybe()
        .flatMap(d -> d.step(stepId))
        .map(s -> context.say(s.task().name()))
        .orElse(stepId);
  }

  private TableBlock closed(List<ClosedAir> closed) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (ClosedAir c : closed) {
      rows.add(
          List.of(
              TableCell.of(areaName(c.area())),
              TableCell.of(
                  c.limit().isForEveryone()
                      ? context.say("sheets.outlook.everyone")
                      : context.say("sheets.outlook.unprotected")),
              TableCell.of(moment(c, true)),
              TableCell.of(moment(c, false))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(context.say("sheets.step-list.where")),
            TableColumn.words(context.say("sheets.outlook.for-whom")),
            TableColumn.number(context.say("sheets.step-list.from")),
            TableColumn.number(context.say("sheets.step-list.until"))),
        rows);
  }

  private String moment(ClosedAir c, boolean start) {
    return c.span()
        .map(TimeSpan::toldAsShut)
        .map(s -> context.times().moment(start ? s.start() : s.end(), plan.dated()))
        .orElse("");
  }

  private String areaName(String id) {
    return plan.site().area(id).map(a -> a.name()).orElse(id);
  }

  /** All steps in their order with their lengths, for a job without dates. */
  List<Block> order() {
    List<List<TableCell>> rows = new ArrayList<>();
    List<ScheduledStep> steps = outlook().order().maybe().map(d -> d.steps()).orElse(List.of());
    for (ScheduledStep s : steps) {
      boolean held = outlook().hold(s.task().id()).isPresent();
      rows.add(
          List.of(
              TableCell.of(
                  (held ? "✕ " : "") + context.say(s.task().name()) + " · " + s.task().area()),
              TableCell.of(context.times().works(s.task().length())),
              TableCell.of(Integer.toString(s.task().people())),
              TableCell.of(held ? context.say("sheets.outlook.is-held") : "")));
    }
    if (rows.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Heading(context.say("sheets.outlook.order")),
        TableBlock.of(
            List.of(
                TableColumn.words(context.say("sheets.step-list.step")),
                TableColumn.number(context.say("sheets.step-list.takes")),
                TableColumn.number(context.say("sheets.step-list.crew")),
                TableColumn.narrow("")),
            rows));
  }
}
