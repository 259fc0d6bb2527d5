package slabwright.sheets.site;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.InkIndex;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.TextStyle;
import slabwright.figures.AreaInks;
import slabwright.figures.BesideWall;
import slabwright.figures.MarkStyles;
import slabwright.figures.PassageWords;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.plan.OutlineLabels;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.sheets.plan.SideName;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;
import slabwright.site.PieceKind;
import slabwright.units.Message;

/** Sheet 1: the floor area with everything marked on it, its walls and doorways in tables. */
public final class LayoutSheet {
  private final FloorArea area;
  private final SheetContext context;
  private final OutlineShape shape;
  private final Region floor;
  private final InkIndex marks;
  private final List<PlanLabel> names;

  public LayoutSheet(FloorArea area, SheetContext context) {
    this.area = area;
    this.context = context;
    this.shape = OutlineShape.of(area.outline(), AreaInks.TOLERANCE);
    this.floor = shape.region();
    this.marks =
        new InkIndex(
            area.marks().stream()
                .filter(m -> !isTrim(m))
                .flatMap(m -> AreaInks.mark(m, floor).stream())
                .toList());
    this.names = area.marks().stream().map(this::name).toList();
  }

  public List<PageDraft> drafts() {
    PlanSheet sheet =
        new PlanSheet(
            context,
            context.say("sheets.layout-sheet.title"),
            subtitle(),
            area.name(),
            CoordinateFrame.SITE,
            shape.ring().bounds());
    return sheet.drafts(this::draw, blocks());
  }

  private String subtitle() {
    return context.say("sheets.layout-sheet.subtitle");
  }

  private void draw(PlanComposer sketch) {
    OutlineLabels words = new OutlineLabels(area, context, sketch);
    sketch.addInks(marks);
    sketch.addInks(AreaInks.outline(area));
    trims(sketch);
    area.marks().forEach(m -> keepOff(sketch, m));
    words.avoidWalls().labelDoorways().placeDimensions();
    names.forEach(sketch::placeLabel);
  }

  private static boolean isTrim(Mark m) {
    return m.kind().type() == MarkType.MASKED_TRIM && m.form() instanceof Form.Trace;
  }

  /** Masked trim runs along walls: beside them, so that their heavy line does not hide it. */
  private void trims(PlanComposer sketch) {
    double off = BesideWall.OFF / sketch.view().scale();
    for (Mark m : area.marks()) {
      if (isTrim(m) && m.form() instanceof Form.Trace t) {
        Line line = new Line(t.path().stream().map(s -> s.vec()).toList());
        Pen pen = MarkStyles.pen(MarkType.MASKED_TRIM);
        sketch.addInks(List.of(Stroke.lines(pen, BesideWall.lines(List.of(line), floor, off))));
      }
    }
  }

  private static void keepOff(PlanComposer sketch, Mark mark) {
    if (mark.form() instanceof Form.Place p) {
      sketch.placeSign(AreaInks.sign(mark, p.at().vec()));
    } else if (mark.form() instanceof Form.Trace t) {
      for (int i = 0; i + 1 < t.path().size(); i++) {
        sketch.keepOff(t.path().get(i).vec(), t.path().get(i + 1).vec());
      }
    } else {
      if (sketch.shows(mark.form().room())) {
        sketch.keepOff(mark.form().region(AreaInks.TOLERANCE).rings());
      }
    }
  }

  private PlanLabel name(Mark mark) {
    TextStyle style = context.type().label();
    PlanLabel words = PlanLabel.of(about(mark), mark.name(), style);
    boolean place = mark.form() instanceof Form.Place;
    Region region = mark.form().region(AreaInks.TOLERANCE);
    if (!region.isEmpty()) {
      words = words.on(MarkStyles.of(mark.kind().type()).field());
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
    blocks.add(new Heading(context.say("sheets.layout-sheet.key")));
    blocks.add(KeyBlock.of(looks()));
    blocks.add(new Gap(3));
    blocks.add(new Heading(context.say("sheets.layout-sheet.outline")));
    blocks.add(outline());
    if (!area.doorways().isEmpty()) {
      blocks.add(new Gap(3));
      blocks.add(new Heading(context.say("sheets.layout-sheet.doorways")));
      blocks.add(doorways());
    }
    return blocks;
  }

  private List<KeyBlock.Entry> looks() {
    Set<MarkType> types = EnumSet.noneOf(MarkType.class);
    area.marks().forEach(m -> types.add(m.kind().type()));
    List<KeyBlock.Entry> entries = new ArrayList<>();
    for (MarkType type : types) {
      List<Form> forms =
          area.marks().stream().filter(m -> m.kind().type() == type).map(Mark::form).toList();
      entries.add(entry(type, forms));
    }
    entries.add(KeyBlock.line(MarkStyles.WALL, context.say("sheets.layout-sheet.wall")));
    if (area.doorways().stream().anyMatch(Doorway::wayIn)) {
      entries.add(KeyBlock.line(MarkStyles.WAY_IN, context.say("sheets.layout-sheet.way-in")));
    }
    return entries;
  }

  private KeyBlock.Entry entry(MarkType type, List<Form> forms) {
    if (forms.stream().allMatch(Form.Place.class::isInstance)) {
      return KeyBlock.sign(
          MarkStyles.sign(type), MarkStyles.colour(type), context.say(type.label()));
    } else if (forms.stream().allMatch(Form.Trace.class::isInstance)) {
      return KeyBlock.line(MarkStyles.pen(type), context.say(type.label()));
    }
    return KeyBlock.look(MarkStyles.of(type), context.say(type.label()));
  }

  private Block outline() {
    List<List<TableCell>> rows = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < shape.pieces().size(); i++) {
      OutlinePiece piece = area.outline().get(i);
      Line line = shape.pieces().get(i);

      sum += line.length();
      rows.add(
          List.of(
              TableCell.of(Integer.toString(i + 1)),
              TableCell.of(described(piece, SideName.of(line, shape.floorOnLeft()))),
              TableCell.of(context.length(line.length()))));
    }
    List<TableCell> total =
        List.of(
            TableCell.of(""),
            TableCell.of(context.say("sheets.layout-sheet.round-the-outline")),
            TableCell.of(context.length(sum)));
    return new TableBlock(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words(context.say("sheets.layout-sheet.piece")),
            TableColumn.number(context.say("sheets.layout-sheet.length"))),
        rows,
        total);
  }

  private String described(OutlinePiece piece, Message side) {
    Message kind = kind(piece.kind());
    return piece.rise().mm() == 0
        ? context.say("sheets.layout-sheet.straight-piece", kind, side)
        : context.say(
            "sheets.layout-sheet.arc-piece", kind, side, context.length(piece.rise().mm()));
  }

  private static Message kind(PieceKind kind) {
    return switch (kind) {
      case WALL -> Message.of("sheets.layout-sheet.wall");
      case OPEN_EDGE -> Message.of("sheets.layout-sheet.open-edge");
      case KERB -> Message.of("sheets.layout-sheet.kerb");
    };
  }

  private Block doorways() {
    List<List<TableCell>> rows = new ArrayList<>();
    PassageWords say = new PassageWords(area, context.units(), context.words());
    for (Doorway d : area.doorways()) {
      rows.add(
          List.of(
              TableCell.of(
                  d.wayIn()
                      ? context.say("sheets.layout-sheet.doorway-way-in", say.doorway(d))
                      : say.doorway(d)),
              TableCell.of(Integer.toString(d.piece() + 1)),
              TableCell.of(context.length(d.width().mm()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.layout-sheet.doorway")),
            TableColumn.number(context.say("sheets.layout-sheet.in-piece")),
            TableColumn.number(context.say("sheets.layout-sheet.width"))),
        rows);
  }
}
