package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.Message;
import slabwright.work.air.MeterRule;

/**
 * What the crew holds while solvent is out: the floors as on the fire plan, for a day page names a
 * window and places of the meter that it does not draw, and lines to write each reading on.
 */
public final class MeterPage {
  private static final double LARGEST = 150;
  private static final double SMALLEST = 60;
  private static final double STEP = 5;
  private static final int MOST_LINES = 40;

  private final PacketContents job;
  private final SheetContext context;

  private MeterPage(PacketContents job) {
    this.job = job;
    this.context = job.portrait();
  }

  /** Nothing where no floor has solvent on it. */
  public static List<PageDraft> drafts(PacketContents job, MissingPages missing) {
    List<SolventFloor> floors = SolventFloor.of(job.work());
    MeterPage page = new MeterPage(job);
    return floors.isEmpty()
        ? List.of()
        : missing.or(
            page.context,
            Message.of("sheets.meter-page.title"),
            "",
            true,
            () -> page.drafts(floors));
  }

  private List<PageDraft> drafts(List<SolventFloor> floors) {
    List<FirePlan> plans =
        floors.stream()
            .flatMap(
                f ->
                    job.area(f.work().id()).stream()
                        .map(a -> new FirePlan(a.takeoff(), f.air(), context)))
            .toList();
    List<PageDraft> pages = new ArrayList<>(plans(plans));
    pages.addAll(lines(plans));
    return pages;
  }

  /** The floors as large as one page allows. */
  private List<PageDraft> plans(List<FirePlan> plans) {
    PageDraft draft =
        draft(context.say("sheets.meter-page.title"), context.say("sheets.meter-page.says"));
    List<PageDraft> pages = List.of();
    for (double high = LARGEST; high >= SMALLEST; high -= STEP) {
      pages = ColumnPages.of(context, draft, FirePlan.blocks(plans, high, false));
      if (pages.size() == 1) {
        return pages;
      }
    }
    return pages;
  }

  /** As many lines as one page has room for. */
  private List<PageDraft> lines(List<FirePlan> plans) {
    PageDraft draft =
        draft(context.say("sheets.meter-page.log"), context.say("sheets.meter-page.log-says"));
    List<PageDraft> pages = List.of();
    for (int lines = MOST_LINES; lines >= 1; lines--) {
      pages = ColumnPages.of(context, draft, List.of(write(), log(plans, lines)));
      if (pages.size() == 1) {
        return pages;
      }
    }
    return pages;
  }

  private Block write() {
    return new Paragraph(context.say("sheets.meter-page.write", MeterRule.USUAL_MINUTES));
  }

  private PageDraft draft(String title, String says) {
    return new PageDraft(title, says, "", Optional.empty(), List.of());
  }

  /** A column for each place of the meter on the floor that has most of them. */
  private Block log(List<FirePlan> plans, int lines) {
    int points = plans.stream().mapToInt(FirePlan::points).max().orElse(1);
    List<TableColumn> columns = new ArrayList<>();
    columns.add(TableColumn.words(context.say("sheets.meter-page.day-and-hour")));
    if (plans.size() > 1) {
      columns.add(TableColumn.words(context.say("sheets.meter-page.floor")));
    }
    for (int i = 1; i <= points; i++) {
      columns.add(TableColumn.words(context.say("sheets.meter-page.ppm-at", i)));
    }
    columns.add(TableColumn.words(context.say("sheets.meter-page.by")));
    List<TableCell> blank = Collections.nCopies(columns.size(), TableCell.of("\u00a0"));
    return TableBlock.of(columns, Collections.nCopies(lines, blank));
  }
}
