package slabwright.sheets.scope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.SignatureLine;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.placement.PlacementColumn;
import slabwright.sheets.placement.PlacementSheet;
import slabwright.sheets.placement.SettingOutSteps;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.work.AreaResult;
import slabwright.work.handover.Handovers;
import slabwright.work.handover.PlacementApproval;

/** The papers handed over beside the numbered sheets, each a page of its own. */
public final class HandoverSheet {
  private final SheetContext context;

  public HandoverSheet(SheetContext context) {
    this.context = context;
  }

  /** Reopening and care, load list and walkthrough. */
  public List<PageDraft> drafts(Handovers papers) {
    List<PageDraft> drafts = new ArrayList<>();
    papers.reopening().forEach(p -> drafts.addAll(paper(p)));
    drafts.addAll(paper(papers.loadList()));
    drafts.addAll(paper(papers.walkthrough()));
    return drafts;
  }

  /** The client's approval of one inlay, with its plan. */
  public List<PageDraft> approval(Site site, AreaResult area, PlacedInlay inlay) {
    slabwright.work.handover.HandoverDocument paper =
        PlacementApproval.of(site, area.takeoff().area(), inlay.inlay());
    List<Block> words = new ArrayList<>();
    inlay
        .settingOut(area.takeoff(), context.units())
        .map(o -> new SettingOutSteps(o, context.units(), context.words()).origin())
        .filter(o -> !o.isEmpty())
        .ifPresent(o -> words.add(new Paragraph(o)));
    words.addAll(blocks(paper));
    words.add(new Heading(context.say("sheets.handover-sheet.key")));
    words.add(PlacementColumn.approvalKey(inlay, context));
    words.addAll(signatures(paper));
    return new PlacementSheet(area, inlay, context)
        .approval(said(paper.title()), subtitle(paper), words);
  }

  private String said(Message m) {
    return context.words().say(m);
  }

  /** One paper. */
  public List<PageDraft> paper(slabwright.work.handover.HandoverDocument paper) {
    PageDraft draft =
        new PageDraft(said(paper.title()), subtitle(paper), "", Optional.empty(), List.of());
    List<Block> words = blocks(paper);
    words.addAll(signatures(paper));
    return ColumnPages.wide(context, draft, words);
  }

  private List<String> intro(slabwright.work.handover.HandoverDocument paper) {
    return paper.intro().stream().map(this::said).filter(s -> !s.isBlank()).toList();
  }

  private String subtitle(slabwright.work.handover.HandoverDocument paper) {
    return intro(paper).stream().findFirst().orElse("");
  }

  /** A paper without its title and lines to sign, for a page with more on it. */
  public List<Block> blocks(slabwright.work.handover.HandoverDocument paper) {
    List<Block> blocks = new ArrayList<>();
    intro(paper).stream().skip(1).forEach(s -> blocks.add(new Paragraph(s)));
    paper.sections().stream()
        .filter(s -> !s.rows().isEmpty())
        .forEach(s -> blocks.addAll(section(s)));
    return blocks;
  }

  private List<Block> signatures(slabwright.work.handover.HandoverDocument paper) {
    return paper.signatures().stream()
        .<Block>map(s -> SignatureLine.of(said(s).replace(", date", ""), context))
        .toList();
  }

  private List<Block> section(slabwright.work.handover.HandoverDocument.Section section) {
    boolean ticks =
        section.rows().stream().anyMatch(slabwright.work.handover.HandoverDocument.Row::tick);
    List<List<TableCell>> rows = new ArrayList<>();
    for (slabwright.work.handover.HandoverDocument.Row row : section.rows()) {
      List<TableCell> cells = new ArrayList<>();
      if (ticks) {
        cells.add(row.tick() ? new TableCell.Tick() : TableCell.of(""));
      }
      cells.add(TableCell.of(said(row.label())));
      cells.add(TableCell.of(said(row.value())));
      rows.add(cells);
    }
    List<TableColumn> columns = new ArrayList<>();
    if (ticks) {
      columns.add(TableColumn.narrow(""));
    }
    columns.add(TableColumn.words(""));
    columns.add(TableColumn.words(""));
    return List.of(new Heading(said(section.heading())), TableBlock.of(columns, rows), new Gap(3));
  }
}
