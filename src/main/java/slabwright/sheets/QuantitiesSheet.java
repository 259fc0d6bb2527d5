package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.floor.FloorNote;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Grinding;
import slabwright.floor.HandKind;
import slabwright.floor.Standing;
import slabwright.floor.Zone;
import slabwright.inlay.PlacedInlay;
import slabwright.site.EdgeClass;
import slabwright.work.AreaWork;

/** Sheet 5: every area and length of a floor area and its inlays. */
final class QuantitiesSheet {
  private final AreaResult results;
  private final FloorTakeoff takeoff;
  private final SheetContext context;

  private final Optional<AreaWork> work;
  private final Optional<String> origin;

  QuantitiesSheet(
      AreaResult results, Optional<AreaWork> work, Optional<String> origin, SheetContext context) {
    this.results = results;
    this.work = work;
    this.origin = origin;
    this.takeoff = results.takeoff();
    this.context = context;
  }

  List<Draft> drafts() {
    Draft draft =
        new Draft(
            "5",
            "Quantities",
            "Areas at the slab, lengths along the floor; every part is counted once",
            takeoff.area().name(),
            Optional.empty(),
            List.of());
    return ColumnPages.of(context.page(), draft, blocks());
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    section(blocks, "Floor", floor());
    section(blocks, "Who grinds what", grinding());
    section(blocks, "By hand, as found", hand());
    section(blocks, "Edges of the free floor", edges());
    if (!takeoff.standing().isEmpty()) {
      section(blocks, "Stands on the floor", standing());
    }
    section(blocks, "Lines and places", new MarkCounts(takeoff, context).table());
    for (PlacedInlay inlay : results.inlays()) {
      blocks.addAll(new InlayQuantities(inlay, work, context).blocks());
    }
    work.ifPresent(w -> blocks.addAll(new WorkQuantities(w, context).blocks()));
    origin.filter(o -> work.isPresent()).ifPresent(o -> blocks.add(new Prose(o)));
    notes(blocks);
    return blocks;
  }

  static void section(List<Block> blocks, String heading, Table table) {
    if (!table.rows().isEmpty()) {
      blocks.add(new Heading(heading));
      blocks.add(table);
      blocks.add(new Gap(4));
    }
  }

  private Table floor() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Zone z : takeoff.zones()) {
      String name = z.mark().map(m -> m.name() + " (" + z.kind() + ")").orElse(z.kind());
      rows.add(areaRow(name, z.area()));
    }
    return new Table(areaColumns("zone"), rows, areaRow("Net floor", takeoff.net().area()));
  }

  private Table grinding() {
    Grinding found = takeoff.asFound();
    Grinding level = takeoff.levelled();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(pair("by machine", found.machine().area(), level.machine().area()));
    rows.add(pair("by hand", found.hand().area(), level.hand().area()));
    double ground = takeoff.ground().area();
    return new Table(
        List.of(
            Column.words(context.areaUnit()),
            Column.number("as found"),
            Column.number("trenches level")),
        rows,
        pair("To be ground", ground, ground));
  }

  private List<Cell> pair(String words, double first, double second) {
    return List.of(
        Cell.of(words), Cell.of(context.bareArea(first)), Cell.of(context.bareArea(second)));
  }

  private Table hand() {
    List<List<Cell>> rows = new ArrayList<>();
    for (HandKind kind : HandKind.values()) {
      int n = takeoff.asFound().pieces(kind).size();
      if (n > 0) {
        rows.add(
            List.of(
                Cell.of(kind.word()),
                Cell.of(Integer.toString(n)),
                Cell.of(context.bareArea(takeoff.asFound().handArea(kind)))));
      }
    }
    return new Table(
        List.of(Column.words("kind"), Column.number("pieces"), Column.number(context.areaUnit())),
        rows,
        List.of());
  }

  private Table edges() {
    List<List<Cell>> rows = new ArrayList<>();
    for (EdgeClass kind : EdgeClass.values()) {
      double length = takeoff.edgeLength(kind);
      if (length > 0) {
        boolean cut = !FloorTakeoff.NOT_CUT_IN.contains(kind);
        rows.add(
            List.of(
                Cell.of(kind.word()),
                Cell.of(context.length(length)),
                Cell.of(cut ? context.length(length) : "")));
      }
    }
    return new Table(
        List.of(Column.words("meets"), Column.number("edge"), Column.number("cut-in")),
        rows,
        List.of(
            Cell.of("Total"),
            Cell.of(context.length(takeoff.edgeLength())),
            Cell.of(context.length(takeoff.cutIn()))));
  }

  private Table standing() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Standing s : takeoff.standing()) {
      rows.add(areaRow(s.mark().name() + " (" + s.mark().kind().type().word() + ")", s.area()));
    }
    double all = takeoff.gross().area() - takeoff.net().area();
    return new Table(areaColumns("what"), rows, areaRow("Gross less net", all));
  }

  private List<Column> areaColumns(String head) {
    return List.of(Column.words(head), Column.number(context.areaUnit()));
  }

  private List<Cell> areaRow(String words, double mm2) {
    return List.of(Cell.of(words), Cell.of(context.bareArea(mm2)));
  }

  private void notes(List<Block> blocks) {
    if (!takeoff.notes().isEmpty()) {
      blocks.add(new Heading("To look at"));
      for (FloorNote note : takeoff.notes()) {
        blocks.add(new Prose(note.sentence()));
      }
    }
  }
}
