package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.handover.HandoverDocument;
import slabwright.work.handover.Reopening;

/** When each floor is shut, when it may be walked on, and how it is kept. */
final class DatesPage {
  private final PacketContents job;
  private final SheetContext context;

  DatesPage(PacketContents job, SheetContext context) {
    this.job = job;
    this.context = context;
  }

  List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.dates-page.title"),
            context.say("sheets.dates-page.subtitle"),
            "",
            Optional.empty(),
            List.of());
    List<Block> blocks = new ArrayList<>();
    for (AreaWorkPlan area : job.work().areas()) {
      Reopening.of(area, job.work()).ifPresent(r -> blocks.addAll(area(area, r)));
    }
    if (blocks.isEmpty()) {
      return List.of();
    }
    if (!job.work().dated()) {
      blocks.add(new Paragraph(context.say("sheets.dates-page.not-dated")));
    }
    blocks.add(new Paragraph(context.say("sheets.dates-page.temperature")));
    blocks.addAll(care());
    blocks.add(new Paragraph(context.say("sheets.dates-page.practice")));
    return ColumnPages.of(context, draft, blocks);
  }

  private List<Block> area(AreaWorkPlan area, Reopening reopening) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(area.name()));
    List<List<TableCell>> rows = new ArrayList<>();
    first(area)
        .ifPresent(
            s ->
                rows.add(
                    row(
                        context.say("sheets.dates-page.shut-from"),
                        context.times().moment(s.start(), job.work().dated()))));
    HandoverDocument paper = reopening.paper(job.work());
    HandoverDocument.Section when = paper.sections().get(0);
    when.rows().forEach(r -> rows.add(row(context.say(r.label()), context.say(r.value()))));
    blocks.add(TableBlock.of(List.of(TableColumn.words(""), TableColumn.words("")), rows));
    return blocks;
  }

  /** What is the same for several floors stands once. */
  private List<Block> care() {
    Map<List<Message>, List<String>> floors = new LinkedHashMap<>();
    for (AreaWorkPlan area : job.work().areas()) {
      Reopening.of(area, job.work())
          .ifPresent(
              r -> floors.computeIfAbsent(r.care(), c -> new ArrayList<>()).add(area.name()));
    }
    List<Block> blocks = new ArrayList<>();
    floors.forEach(
        (care, names) -> {
          blocks.add(new Heading(context.say("sheets.dates-page.care", String.join(", ", names))));
          blocks.add(new BulletBlock(care.stream().map(context::say).toList()));
        });
    return blocks;
  }

  private Optional<ScheduledStep> first(AreaWorkPlan area) {
    return job.work()
        .days()
        .maybe()
        .flatMap(d -> d.steps().stream().filter(s -> s.task().type().isOn(area.id())).findFirst());
  }

  private static List<TableCell> row(String what, String when) {
    return List.of(TableCell.of(what), TableCell.bold(when));
  }
}
