package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.site.Site;
import slabwright.work.job.Handovers;
import slabwright.work.job.PlacementApproval;

/** The papers handed over beside the numbered sheets, each a page of its own. */
final class HandoverSheet {
  private final SheetContext context;

  HandoverSheet(SheetContext context) {
    this.context = context;
  }

  /** Reopening and care, load list and walkthrough. */
  List<Draft> drafts(Handovers papers) {
    List<Draft> drafts = new ArrayList<>();
    papers.reopening().forEach(p -> drafts.addAll(drafts(p)));
    drafts.addAll(drafts(papers.loadList()));
    drafts.addAll(drafts(papers.walkthrough()));
    return drafts;
  }

  /** The client's approval of one inlay, with its plan. */
  List<Draft> approval(Site site, AreaResult area, PlacedInlay inlay) {
    slabwright.work.job.Paper paper =
        PlacementApproval.of(site, area.takeoff().area(), inlay.inlay());
    List<Block> words = blocks(paper);
    words.add(new Heading("Key"));
    words.add(PlacementColumn.key(inlay));
    words.addAll(signatures(paper));
    return new PlacementSheet(area, inlay, context).approval(paper.title(), subtitle(paper), words);
  }

  private List<Draft> drafts(slabwright.work.job.Paper paper) {
    Draft draft = new Draft("", paper.title(), subtitle(paper), "", Optional.empty(), List.of());
    List<Block> words = blocks(paper);
    words.addAll(signatures(paper));
    return ColumnPages.wide(context.page(), draft, words);
  }

  private static List<String> intro(slabwright.work.job.Paper paper) {
    return paper.intro().stream().filter(s -> !s.isBlank()).toList();
  }

  private static String subtitle(slabwright.work.job.Paper paper) {
    return intro(paper).stream().findFirst().orElse("");
  }

  private static List<Block> blocks(slabwright.work.job.Paper paper) {
    List<Block> blocks = new ArrayList<>();
    intro(paper).stream().skip(1).forEach(s -> blocks.add(new Prose(s)));
    paper.sections().stream()
        .filter(s -> !s.rows().isEmpty())
        .forEach(s -> blocks.addAll(section(s)));
    return blocks;
  }

  private static List<Block> signatures(slabwright.work.job.Paper paper) {
    return paper.signatures().stream()
        .<Block>map(s -> new SignLine(s.replace(", date", "")))
        .toList();
  }

  private static List<Block> section(slabwright.work.job.Paper.Section section) {
    boolean ticks = section.rows().stream().anyMatch(slabwright.work.job.Paper.Row::tick);
    List<List<Cell>> rows = new ArrayList<>();
    for (slabwright.work.job.Paper.Row row : section.rows()) {
      List<Cell> cells = new ArrayList<>();
      if (ticks) {
        cells.add(row.tick() ? new Cell.Tick() : Cell.of(""));
      }
      cells.add(Cell.of(row.label()));
      cells.add(Cell.of(row.value()));
      rows.add(cells);
    }
    List<Column> columns = new ArrayList<>();
    if (ticks) {
      columns.add(Column.narrow(""));
    }
    columns.add(Column.words(""));
    columns.add(Column.words(""));
    return List.of(new Heading(section.heading()), Table.of(columns, rows), new Gap(3));
  }
}
