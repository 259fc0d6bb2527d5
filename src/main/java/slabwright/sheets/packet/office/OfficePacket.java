package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.sheets.packet.CareRules;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnLayout;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.DenseBlock;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
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
  private static final double TABLES_HIGHER = 1.5;

  private static final double LISTS_HIGHER = 2;

  /** Space between tables over the whole width and the columns under them, mm. */
  private static final double UNDER = 3;

  /** Columns lower than this are begun on the next page, mm. */
  private static final double LEAST_COLUMN = 60;

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
    Message photos = Message.of("sheets.photo-pages.title");
    Message summary = Message.of("sheets.summary-page.title");
    Message numbers = Message.of("sheets.office-packet.take-off");
    List<PageDraft> drafts =
        new ArrayList<>(missing.or(context, asked, "", false, packet::walkthrough));
    drafts.addAll(
        missing.or(context, photos, "", false, () -> new PhotoPages(job, context).drafts()));
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

  /**
   * Cost first, then how the floor is worked, over the whole width; take-off and lists to tick in
   * two columns after them.
   */
  private List<PageDraft> numbers() {
    List<Block> narrow = new ArrayList<>();
    List<Block> wide = new ArrayList<>();
    wide.add(
        new Paragraph(
            context.say(WorkPlan.NOTICE) + " " + context.say(job.work().book().origin())));
    wide.addAll(new ScopeSheet(job.work(), Scope.of(job.work()), context).prices());
    for (AreaResult area : job.areas()) {
      Heading name = new Heading(area.takeoff().area().name());
      QuantitiesSheet sheet =
          new QuantitiesSheet(
              area, job.work().area(area.takeoff().area().id()), Optional.empty(), context);
      OfficeSections sections = OfficeSections.of(notSaid(sheet.blocks()), TABLES_HIGHER, context);
      add(narrow, name, sections.narrow());
      add(wide, name, sections.wide());
    }
    Heading list = new Heading(context.say(papers.loadList().title()));
    OfficeSections load =
        OfficeSections.of(
            notSaid(new HandoverSheet(context).blocks(papers.loadList())), LISTS_HIGHER, context);
    add(wide, list, load.wide());
    List<Block> dense = new ArrayList<>(narrow);
    add(dense, list, load.narrow().stream().map(OfficePacket::dense).toList());
    add(narrow, list, load.narrow());
    add(wide, new Heading(context.say("sheets.office-packet.rules")), new CareRules(job).blocks());
    List<PageDraft> open = numbers(wide, narrow);
    List<PageDraft> closer = numbers(wide, dense);
    return closer.size() < open.size() ? closer : open;
  }

  /** The rows of a list closer together; headings stay as they are. */
  private static Block dense(Block block) {
    return block instanceof TableBlock ? new DenseBlock(block) : block;
  }

  private List<PageDraft> numbers(List<Block> wide, List<Block> narrow) {
    PageDraft draft =
        page(
            context.say("sheets.office-packet.numbers"),
            context.say("sheets.office-packet.numbers-say"));
    List<PageDraft> pages = new ArrayList<>();
    for (List<Ink> inks :
        ColumnLayout.wideThenColumns(context.page(), wide, 2, narrow, UNDER, LEAST_COLUMN)) {
      pages.add(pages.isEmpty() ? draft.withInks(inks) : draft.continued(inks, context.words()));
    }
    return pages;
  }

  /** Without what the walkthrough's form and the summary have, and the batches of the crew. */
  private List<Block> notSaid(List<Block> blocks) {
    List<Heading> said = new ArrayList<>();
    papers.walkthrough().sections().forEach(s -> said.add(new Heading(context.say(s.heading()))));
    said.add(new Heading(context.say("sheets.work-quantities.kits-to-buy")));
    said.add(new Heading(context.say("sheets.batch-table.batches-of-one-coat")));
    said.add(new Heading(context.say("sheets.filler-quantities.mixing")));
    return OfficeSections.sections(blocks).stream()
        .filter(s -> s.stream().noneMatch(said::contains))
        .flatMap(List::stream)
        .toList();
  }

  private static void add(List<Block> blocks, Heading name, List<Block> more) {
    if (!more.isEmpty()) {
      blocks.add(name);
      blocks.addAll(more);
    }
  }
}
