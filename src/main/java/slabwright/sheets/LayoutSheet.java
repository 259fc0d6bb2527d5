package slabwright.sheets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slabwright.drawing.Frame;
import slabwright.drawing.Ink;
import slabwright.drawing.TextStyle;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;

/** Sheet 1: the floor area with everything marked on it, its walls and doorways in tables. */
final class LayoutSheet {
  private final FloorArea area;
  private final SheetContext context;
  private final OutlineShape shape;
  private final Region floor;
  private final List<Ink> marks;
  private final List<PlanWords> names;

  LayoutSheet(FloorArea area, SheetContext context) {
    this.area = area;
    this.context = context;
    this.shape = OutlineShape.of(area.outline(), AreaInks.TOLERANCE);
    this.floor = shape.region();
    this.marks = area.marks().stream().flatMap(m -> AreaInks.mark(m, floor).stream()).toList();
    this.names = area.marks().stream().map(this::name).toList();
  }

  List<Draft> drafts() {
    PlanSheet sheet =
        new PlanSheet(
            context,
            "1",
            "Site layout",
            subtitle(),
            area.name(),
            Frame.SITE,
            shape.ring().bounds());
    return sheet.drafts(this::draw, blocks());
  }

  private String subtitle() {
    return "Walls as measured at the slab; everything that stands on the floor or lies in it";
  }

  private void draw(Sketch sketch) {
    OutlineWords words = new OutlineWords(area, context.units(), sketch);
    sketch.ink(marks);
    sketch.ink(AreaInks.outline(area));
    area.marks().forEach(m -> keepOff(sketch, m));
    words.walls().doorways().dimensions();
    names.forEach(sketch::words);
  }

  private static void keepOff(Sketch sketch, Mark mark) {
    if (mark.form() instanceof Form.Place p) {
      sketch.sign(AreaInks.sign(mark, p.at().vec()));
    } else if (mark.form() instanceof Form.Trace t) {
      for (int i = 0; i + 1 < t.path().size(); i++) {
        sketch.keepOff(t.path().get(i).vec(), t.path().get(i + 1).vec());
      }
    } else {
      sketch.keepOff(mark.form().region(AreaInks.TOLERANCE).rings());
    }
  }

  private PlanWords name(Mark mark) {
    TextStyle style = context.type().strong().sized(2.7 * context.type().k());
    PlanWords words = PlanWords.of(about(mark), mark.name(), style);
    boolean place = mark.form() instanceof Form.Place;
    Region region = mark.form().region(AreaInks.TOLERANCE);
    if (!region.isEmpty()) {
      words = words.on(MarkLooks.of(mark.kind().type()).field());
    }
    return place ? words.nearBy(5) : words;
  }

  /** A point of the mark that its name speaks of. */
  private Vec about(Mark mark) {
    Region region = mark.form().region(AreaInks.TOLERANCE).intersect(floor);
    if (!region.isEmpty()) {
      return region.labelPoint();
    }
    List<Vec> spots = mark.form().spots().stream().map(s -> s.vec()).toList();
    return spots.size() < 2 ? spots.get(0) : spots.get(0).towards(spots.get(1), 0.5);
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Key"));
    blocks.add(Key.of(looks()));
    blocks.add(new Gap(3));
    blocks.add(new Heading("Outline"));
    blocks.add(outline());
    if (!area.doorways().isEmpty()) {
      blocks.add(new Gap(3));
      blocks.add(new Heading("Doorways"));
      blocks.add(doorways());
    }
    return blocks;
  }

  private List<Key.Entry> looks() {
    Set<MarkType> types = EnumSet.noneOf(MarkType.class);
    area.marks().forEach(m -> types.add(m.kind().type()));
    List<Key.Entry> entries = new ArrayList<>();
    for (MarkType type : types) {
      List<Form> forms =
          area.marks().stream().filter(m -> m.kind().type() == type).map(Mark::form).toList();
      entries.add(entry(type, forms));
    }
    entries.add(Key.line(MarkLooks.WALL, "wall"));
    if (area.doorways().stream().anyMatch(Doorway::wayIn)) {
      entries.add(Key.line(MarkLooks.WAY_IN, "way in"));
    }
    return entries;
  }

  private static Key.Entry entry(MarkType type, List<Form> forms) {
    if (forms.stream().allMatch(Form.Place.class::isInstance)) {
      return Key.sign(MarkLooks.sign(type), MarkLooks.colour(type), type.word());
    } else if (forms.stream().allMatch(Form.Trace.class::isInstance)) {
      return Key.line(MarkLooks.pen(type), type.word());
    }
    return Key.look(MarkLooks.of(type), type.word());
  }

  private Block outline() {
    List<List<Cell>> rows = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < shape.pieces().size(); i++) {
      OutlinePiece piece = area.outline().get(i);
      Line line = shape.pieces().get(i);
      String kind = piece.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
      String rise = piece.rise().mm() == 0 ? "" : ", rise " + context.length(piece.rise().mm());
      sum += line.length();
      rows.add(
          List.of(
              Cell.of(Integer.toString(i + 1)),
              Cell.of(kind + " " + Facing.of(line, shape.floorOnLeft()) + rise),
              Cell.of(context.length(line.length()))));
    }
    List<Cell> total =
        List.of(Cell.of(""), Cell.of("Round the outline"), Cell.of(context.length(sum)));
    return new Table(
        List.of(Column.narrow(""), Column.words("piece"), Column.number("length")), rows, total);
  }

  private Block doorways() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Doorway d : area.doorways()) {
      rows.add(
          List.of(
              Cell.of(d.name() + (d.wayIn() ? ", way in" : "")),
              Cell.of(Integer.toString(d.piece() + 1)),
              Cell.of(context.length(d.width().mm()))));
    }
    return Table.of(
        List.of(Column.words("doorway"), Column.number("in piece"), Column.number("width")), rows);
  }
}
