package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.floor.FloorNote;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.GrindingSplit;
import slabwright.floor.HandWorkKind;
import slabwright.floor.Obstacle;
import slabwright.floor.Zone;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.site.EdgeClass;
import slabwright.site.Mark;
import slabwright.work.AreaResult;
import slabwright.work.AreaWorkPlan;

/** Sheet 5: every area and length of a floor area and its inlays. */
public final class QuantitiesSheet {
  private final AreaResult results;
  private final FloorTakeoff takeoff;
  private final SheetContext context;

  private final Optional<AreaWorkPlan> work;
  private final Optional<String> origin;

  public QuantitiesSheet(
      AreaResult results,
      Optional<AreaWorkPlan> work,
      Optional<String> origin,
      SheetContext context) {
    this.results = results;
    this.work = work;
    this.origin = origin;
    this.takeoff = results.takeoff();
    this.context = context;
  }

  public List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.quantities-sheet.title"),
            context.say("sheets.quantities-sheet.subtitle"),
            takeoff.area().name(),
            Optional.empty(),
            List.of());
    return ColumnPages.of(context, draft, blocks());
  }

  /** All of it, for a page with more on it. */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    section(blocks, context.say("sheets.quantities-sheet.floor"), floor());
    section(blocks, context.say("sheets.quantities-sheet.who-grinds-what"), grinding());
    section(blocks, context.say("sheets.quantities-sheet.by-hand-as-found"), hand());
    section(blocks, context.say("sheets.quantities-sheet.edges"), edges());
    if (!takeoff.standing().isEmpty()) {
      section(blocks, context.say("sheets.quantities-sheet.stands"), standing());
    }
    section(
        blocks,
        context.say("sheets.quantities-sheet.lines-and-places"),
        new MarkCounts(takeoff, context).table());
    for (PlacedInlay inlay : results.inlays()) {
      blocks.addAll(new InlayQuantities(inlay, work, context).blocks());
    }
    work.ifPresent(w -> blocks.addAll(new WorkQuantities(w, context).blocks()));
    origin.filter(o -> work.isPresent()).ifPresent(o -> blocks.add(new Paragraph(o)));
    notes(blocks);
    return blocks;
  }

  public static void section(List<Block> blocks, String heading, TableBlock table) {
    if (!table.rows().isEmpty()) {
      blocks.add(new Heading(heading));
      blocks.add(table);
      blocks.add(new Gap(4));
    }
  }

  private TableBlock floor() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (List<Zone> same : Crowds.of(takeoff.zones(), Zone::kind)) {
      String kind = context.words().say(same.get(0).kind());
      String name = same.get(0).mark().map(m -> named(m, kind, same.size())).orElse(kind);
      rows.add(areaRow(name, same.stream().mapToDouble(Zone::area).sum()));
    }
    return new TableBlock(
        areaColumns(context.say("sheets.quantities-sheet.zone")),
        rows,
        areaRow(context.say("sheets.quantities-sheet.net-floor"), takeoff.net().area()));
  }

  private TableBlock grinding() {
    GrindingSplit found = takeoff.asFound();
    GrindingSplit level = takeoff.levelled();
    List<List<TableCell>> rows = new ArrayList<>();
    rows.add(
        pair(
            context.say("sheets.quantities-sheet.by-machine"),
            found.machine().area(),
            level.machine().area()));
    rows.add(
        pair(
            context.say("sheets.quantities-sheet.by-hand"),
            found.hand().area(),
            level.hand().area()));
    double ground = takeoff.ground().area();
    return new TableBlock(
        List.of(
            TableColumn.words(context.areaUnit()),
            TableColumn.number(context.say("sheets.quantities-sheet.as-found")),
            TableColumn.number(context.say("sheets.quantities-sheet.trenches-level"))),
        rows,
        pair(
            takeoff.isGrindingChosen()
                ? context.say("sheets.quantities-sheet.to-be-ground")
                : context.say("sheets.quantities-sheet.if-ground"),
            ground,
            ground));
  }

  private List<TableCell> pair(String words, double first, double second) {
    return List.of(
        TableCell.of(words),
        TableCell.of(context.bareArea(first)),
        TableCell.of(context.bareArea(second)));
  }

  private TableBlock hand() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (HandWorkKind kind : HandWorkKind.values()) {
      int n = takeoff.asFound().pieces(kind).size();
      if (n > 0) {
        rows.add(
            List.of(
                TableCell.of(context.words().say(kind.word())),
                TableCell.of(Integer.toString(n)),
                TableCell.of(context.bareArea(takeoff.asFound().handArea(kind)))));
      }
    }
    return new TableBlock(
        List.of(
            TableColumn.words(context.say("sheets.quantities-sheet.kind")),
            TableColumn.number(context.say("sheets.quantities-sheet.pieces")),
            TableColumn.number(context.areaUnit())),
        rows,
        List.of());
  }

  private TableBlock edges() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (EdgeClass kind : EdgeClass.values()) {
      double length = takeoff.edgeLength(kind);
      if (length > 0) {
        boolean cut = !FloorTakeoff.NOT_CUT_IN.contains(kind);
        rows.add(
            List.of(
                TableCell.of(context.say(kind.label())),
                TableCell.of(context.length(length)),
                TableCell.of(cut ? context.length(length) : "")));
      }
    }
    return new TableBlock(
        List.of(
            TableColumn.words(context.say("sheets.quantities-sheet.meets")),
            TableColumn.number(context.say("sheets.quantities-sheet.edge")),
            TableColumn.number(context.say("sheets.quantities-sheet.cut-in"))),
        rows,
        List.of(
            TableCell.of(context.say("sheets.quantities-sheet.total")),
            TableCell.of(context.length(takeoff.edgeLength())),
            TableCell.of(context.length(takeoff.cutIn()))));
  }

  private TableBlock standing() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (List<Obstacle> same : Crowds.of(takeoff.standing(), o -> o.mark().kind().type())) {
      Mark first = same.get(0).mark();
      rows.add(
          areaRow(
              named(first, context.say(first.kind().type().label()), same.size()),
              same.stream().mapToDouble(Obstacle::area).sum()));
    }
    double all = takeoff.gross().area() - takeoff.net().area();
    return new TableBlock(
        areaColumns(context.say("sheets.quantities-sheet.what")),
        rows,
        areaRow(context.say("sheets.quantities-sheet.gross-less-net"), all));
  }

  private String named(Mark first, String kind, int count) {
    return count == 1
        ? context.say("sheets.quantities-sheet.name-and-kind", first.name(), kind)
        : context.say("sheets.quantities-sheet.crowd", kind, count);
  }

  private List<TableColumn> areaColumns(String head) {
    return List.of(TableColumn.words(head), TableColumn.number(context.areaUnit()));
  }

  private List<TableCell> areaRow(String words, double mm2) {
    return List.of(TableCell.of(words), TableCell.of(context.bareArea(mm2)));
  }

  private void notes(List<Block> blocks) {
    if (!takeoff.notes().isEmpty()) {
      blocks.add(new Heading(context.say("sheets.quantities-sheet.to-look-at")));
      for (FloorNote note : takeoff.notes()) {
        blocks.add(new Paragraph(context.words().say(note.message())));
      }
    }
  }
}
