package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.work.job.Handovers;

/** The papers handed over beside the numbered sheets, each a page of its own. */
final class HandoverSheet {
  private final SheetContext context;

  HandoverSheet(SheetContext context) {
    this.context = context;
  }

  List<Draft> drafts(Handovers papers) {
    List<Draft> drafts = new ArrayList<>();
    papers.approvals().forEach(p -> drafts.addAll(drafts(p)));
    papers.reopening().forEach(p -> drafts.addAll(drafts(p)));
    drafts.addAll(drafts(papers.loadList()));
    drafts.addAll(drafts(papers.walkthrough()));
    return drafts;
  }

  private List<Draft> drafts(slabwright.work.job.Paper paper) {
    List<String> intro = paper.intro().stream().filter(s -> !s.isBlank()).toList();
    String subtitle = intro.isEmpty() ? "" : intro.get(0);
    Draft draft = new Draft("", paper.title(), subtitle, "", Optional.empty(), List.of());
    List<Block> blocks = new ArrayList<>();
    intro.stream().skip(1).forEach(s -> blocks.add(new Prose(s)));
    paper.sections().stream()
        .filter(s -> !s.rows().isEmpty())
        .forEach(s -> blocks.addAll(section(s)));
    paper.signatures().forEach(s -> blocks.add(new SignLine(s)));
    return ColumnPages.of(context.page(), draft, blocks);
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
