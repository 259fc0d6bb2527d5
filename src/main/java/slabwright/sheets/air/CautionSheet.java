package slabwright.sheets.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.sheets.days.OutlookBlocks;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.rule.RuleNote;

/** Sheet 7: air, ignition, dust and the rules that apply on one floor area. */
public final class CautionSheet {
  private final AreaWorkPlan work;
  private final WorkPlan plan;
  private final SheetContext context;

  public CautionSheet(AreaWorkPlan work, WorkPlan plan, SheetContext context) {
    this.work = work;
    this.plan = plan;
    this.context = context;
  }

  public List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.caution-sheet.title"),
            context.say("sheets.caution-sheet.subtitle"),
            work.name(),
            Optional.empty(),
            List.of());
    List<Block> blocks =
        new ArrayList<>(new OutlookBlocks(plan, Optional.of(work.id()), context).blocks());
    blocks.add(new Paragraph(context.say(WorkPlan.NOTICE)));
    blocks.add(new Paragraph(context.say(plan.book().origin())));
    blocks.add(new Gap(2));
    Optional<AirPlan> air = work.air().maybe();
    if (air.isPresent()) {
      air(blocks, air.get());
    } else {
      blocks.add(new Heading(context.say("sheets.caution-sheet.air")));
      blocks.add(
          new CautionBlock(
              context.say("sheets.caution-sheet.not-computed"),
              context.say(work.air().text(a -> ""))));
    }
    rules(blocks);
    return ColumnPages.of(context, draft, blocks);
  }

  private void air(List<Block> blocks, AirPlan air) {
    air.screening()
        .ifPresent(
            s ->
                new AirColumn(
                        s,
                        context.say(air.assumption()),
                        JobClock.of(plan, context.words()),
                        context)
                    .addTo(blocks));
    if (air.fire().applies()) {
      blocks.add(
          new CautionBlock(
              context.say("sheets.caution-sheet.fire-code"),
              context.say(
                  "sheets.caution-sheet.fire-code-applies",
                  air.fire().reasons().stream()
                      .map(context::say)
                      .collect(Collectors.joining("; ")))));
    }
  }

  /** Whether there is solvent to be careful with. */
  public static boolean hasSolvent(AirPlan air) {
    return !air.ignition().before().isEmpty();
  }

  static void checklist(List<Block> blocks, String heading, List<String> lines) {
    blocks.add(new Heading(heading));
    List<List<TableCell>> rows =
        lines.stream().map(l -> List.<TableCell>of(new TableCell.Tick(), TableCell.of(l))).toList();
    blocks.add(TableBlock.of(List.of(TableColumn.narrow(""), TableColumn.words("")), rows));
    blocks.add(new Gap(3));
  }

  private void rules(List<Block> blocks) {
    if (work.notes().isEmpty()) {
      return;
    }
    blocks.add(new Heading(context.say("sheets.caution-sheet.rules")));
    for (RuleNote n : work.notes()) {
      blocks.add(new RuleBlock(n, context.words()));
    }
    blocks.add(new Gap(3));
  }

  /** The sign of a verdict. */
  static String sign(RuleNote.Verdict verdict) {
    return switch (verdict) {
      case FINE -> "✓";
      case LOOK -> "!";
      case NOT_MET -> "✕";
      case UNKNOWN -> "?";
    };
  }
}
