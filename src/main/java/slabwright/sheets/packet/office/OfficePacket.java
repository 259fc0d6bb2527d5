package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Bounds;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.quantities.QuantitiesSheet;
import slabwright.sheets.scope.HandoverSheet;
import slabwright.sheets.scope.ScopeSheet;
import slabwright.units.Message;
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

  /** With fewer squares nobody sketches: they get a page of their own. */
  private static final int LEAST_ROWS = 9;

  /** By how much tables, and lists to tick, may get higher in half the width. */
  private static final double TABLES_HIGHER = 1.12;

  private static final double LISTS_HIGHER = 2;

  /** A page with less on it is not worth its paper. */
  private static final double LEAST_FULL = 0.45;

  private final PacketContents job;
  private final SheetContext context;
  private final Handovers papers;

  private OfficePacket(PacketContents job) {
    this.job = job;
    this.context = job.portrait();
    this.papers = Handovers.of(job.work());
  }

  public static List<FramedDraft> drafts(PacketContents job, MissingPages missing) {
    OfficePacket packet = new OfficePacket(job);
    SheetContext context = packet.context;
    Message asked = Message.of("sheets.office-packet.walkthrough");
    Message summary = Message.of("sheets.summary-page.title");
    Message numbers = Message.of("sheets.office-packet.take-off");
    List<PageDraft> drafts =
        new ArrayList<>(missing.or(context, asked, "", false, packet::walkthrough));
    drafts.addAll(
        missing.or(context, summary, "", false, () -> new SummaryPage(job, context).drafts()));
    drafts.addAll(missing.or(context, numbers, "", false, packet::numbers));
    return FramedDraft.all(context, drafts);
  }

  private PageDraft page(String title, String subtitle) {
    return new PageDraft(title, subtitle, "", Optional.empty(), List.of());
  }

  /** What is still to be asked, with room to write, and squares to sketch on. */
  private List<PageDraft> walkthrough() {
    List<Block> asked = new ArrayList<>();
    for (HandoverDocument.Section section : papers.walkthrough().sections()) {
      if (!section.rows().isEmpty()) {
        asked.add(new Heading(context.say(section.heading())));
        section
            .rows()
            .forEach(
                r ->
                    asked.add(
                        new AskBlock(context.say(r.label()), context.say(r.value()), r.tick())));
      }
    }
    PageDraft page =
        page(
            context.say("sheets.office-packet.walkthrough"),
            context.say("sheets.office-packet.walkthrough-says"));
    int least = ColumnPages.of(context, page, asked).size();
    for (int rows = GRID_ROWS; rows >= LEAST_ROWS; rows--) {
      List<PageDraft> pages = ColumnPages.of(context, page, sketched(asked, rows));
      if (pages.size() == least) {
        return pages;
      }
    }
    return ColumnPages.of(context, page, sketched(asked, GRID_ROWS));
  }

  private List<Block> sketched(List<Block> asked, int rows) {
    List<Block> blocks = new ArrayList<>(asked);
    blocks.add(new Heading(context.say("sheets.office-packet.sketch")));
    blocks.add(new SketchGrid(context.units() == UnitSystem.METRIC ? 5 : 6.35, rows));
    return blocks;
  }

  /** Tables of few columns in two columns a page, the others over the whole width. */
  private List<PageDraft> numbers() {
    List<Block> narrow = new ArrayList<>();
    List<Block> wide = new ArrayList<>();
    wide.add(new Paragraph(context.say(WorkPlan.NOTICE)));
    for (AreaResult area : job.areas()) {
      Heading name = new Heading(area.takeoff().area().name());
      QuantitiesSheet sheet =
          new QuantitiesSheet(
              area, job.work().area(area.takeoff().area().id()), Optional.empty(), context);
      OfficeSections sections = OfficeSections.of(sheet.blocks(), TABLES_HIGHER, context);
      add(narrow, name, sections.narrow());
      add(wide, name, sections.wide());
    }
    wide.addAll(new ScopeSheet(job.work(), Scope.of(job.work()), context).prices());
    OfficeSections load =
        OfficeSections.of(
            new HandoverSheet(context).blocks(papers.loadList()), LISTS_HIGHER, context);
    Heading list = new Heading(context.say(papers.loadList().title()));
    add(narrow, list, load.narrow());
    List<Block> last = new ArrayList<>(load.wide());
    PageDraft first =
        page(
            context.say("sheets.office-packet.take-off"),
            context.say("sheets.office-packet.numbers-say"));
    List<PageDraft> pages = new ArrayList<>(filled(first, narrow, last));
    add(wide, list, last);
    pages.addAll(
        ColumnPages.of(
            context,
            page(
                context.say("sheets.office-packet.cost"),
                context.say("sheets.office-packet.numbers-say")),
            wide));
    return pages;
  }

  /** Pages of two columns; sections that would leave the last one nearly empty go over. */
  private List<PageDraft> filled(PageDraft first, List<Block> blocks, List<Block> over) {
    List<List<Block>> sections = new ArrayList<>(OfficeSections.sections(blocks));
    while (true) {
      List<Block> all = sections.stream().flatMap(List::stream).toList();
      List<PageDraft> pages = ColumnPages.of(context, first, 2, all);
      if (pages.size() < 2 || share(pages.get(pages.size() - 1)) >= LEAST_FULL) {
        return pages;
      }
      over.addAll(0, sections.remove(sections.size() - 1));
    }
  }

  /** Down to where something stands, as a share of the page. */
  private double share(PageDraft page) {
    Bounds body = context.page().body();
    double lowest =
        page.inks().stream().mapToDouble(i -> i.reach().maxY()).max().orElse(body.minY());
    return (lowest - body.minY()) / body.height();
  }

  private static void add(List<Block> blocks, Heading name, List<Block> more) {
    if (!more.isEmpty()) {
      blocks.add(name);
      blocks.addAll(more);
    }
  }
}
