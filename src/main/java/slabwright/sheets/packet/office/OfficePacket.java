package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.quantities.QuantitiesSheet;
import slabwright.sheets.scope.HandoverSheet;
import slabwright.sheets.scope.ScopeSheet;
import slabwright.units.UnitSystem;
import slabwright.work.AreaResult;
import slabwright.work.WorkPlan;
import slabwright.work.handover.HandoverDocument;
import slabwright.work.handover.Handovers;
import slabwright.work.handover.Scope;

/** The office's pages: the walkthrough's form first, a summary, then take-off, cost and lists. */
public final class OfficePacket {
  /** Rows of squares that fill the rest of a page, at most. */
  private static final int GRID_ROWS = 28;

  private final PacketContents job;
  private final SheetContext context;
  private final Handovers papers;

  private OfficePacket(PacketContents job) {
    this.job = job;
    this.context = job.portrait();
    this.papers = Handovers.of(job.work());
  }

  public static List<FramedDraft> drafts(PacketContents job) {
    OfficePacket packet = new OfficePacket(job);
    List<PageDraft> drafts = new ArrayList<>(packet.walkthrough());
    drafts.addAll(new SummaryPage(job, packet.context).drafts());
    drafts.addAll(packet.numbers());
    return FramedDraft.all(packet.context, drafts);
  }

  private PageDraft page(String title, String subtitle) {
    return new PageDraft(title, subtitle, "", Optional.empty(), List.of());
  }

  /** What is still to be asked, with room to write, and squares to sketch on. */
  private List<PageDraft> walkthrough() {
    List<Block> blocks = new ArrayList<>();
    for (HandoverDocument.Section section : papers.walkthrough().sections()) {
      if (!section.rows().isEmpty()) {
        blocks.add(new Heading(context.say(section.heading())));
        section
            .rows()
            .forEach(
                r ->
                    blocks.add(
                        new AskBlock(context.say(r.label()), context.say(r.value()), r.tick())));
      }
    }
    blocks.add(new Heading(context.say("sheets.office-packet.sketch")));
    blocks.add(new SketchGrid(context.units() == UnitSystem.METRIC ? 5 : 6.35, GRID_ROWS));
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.office-packet.walkthrough"),
            context.say("sheets.office-packet.walkthrough-says")),
        blocks);
  }

  private List<PageDraft> numbers() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Paragraph(context.say(WorkPlan.NOTICE)));
    for (AreaResult area : job.areas()) {
      blocks.add(new Heading(area.takeoff().area().name()));
      blocks.addAll(
          new QuantitiesSheet(
                  area, job.work().area(area.takeoff().area().id()), Optional.empty(), context)
              .blocks());
    }
    blocks.addAll(new ScopeSheet(job.work(), Scope.of(job.work()), context).prices());
    blocks.add(new Heading(context.say(papers.loadList().title())));
    blocks.addAll(new HandoverSheet(context).blocks(papers.loadList()));
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.office-packet.numbers"),
            context.say("sheets.office-packet.numbers-say")),
        blocks);
  }
}
