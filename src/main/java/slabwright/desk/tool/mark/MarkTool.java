package slabwright.desk.tool.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.NewIds;
import slabwright.desk.model.edit.PlainNames;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.Tool;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.edit.Edit;
import slabwright.site.edit.MarkEdit;
import slabwright.units.BareUnit;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** Draws marks of one kind; the way of drawing is one of a few that suit it. */
public final class MarkTool implements Tool {
  private final DeskContext bench;
  private final PlanLookup shown;
  private final RecentSizes sizes;
  private final MarkType type;
  private MarkShape shape;
  private Shaper shaper;

  public MarkTool(DeskContext bench, PlanLookup shown, RecentSizes sizes, MarkType type) {
    this.bench = bench;
    this.shown = shown;
    this.sizes = sizes;
    this.type = type;
    this.shape = MarkShape.of(type).get(0);
    this.shaper = shaper(shape);
  }

  private Shaper shaper(MarkShape s) {
    return switch (s) {
      case PATH, LINE, CORNERS -> new PolylineShaper(s, sizes, this::units);
      case RECTANGLE, ROUND, ROUND_ENDED -> new BoxShaper(s, LengthUse.ofSides(type), this::units);
      case FREEHAND -> new FreehandShaper();
      case WALL_TO_WALL -> new WholeFloorShaper(shown);
      case ROW -> new RowShaper(shown, sizes, this::units);
      case POINT -> new PointShaper(this::units);
    };
  }

  private UnitSystem units() {
    return bench.desk().site().units();
  }

  private void use(MarkShape s) {
    shape = s;
    shaper = shaper(s);
  }

  @Override
  public Message prompt() {
    return shaper.prompt();
  }

  @Override
  public List<Option> options() {
    List<MarkShape> ways = MarkShape.of(type);
    return ways.size() < 2
        ? List.of()
        : ways.stream().map(w -> new Option(w.word(), w == shape, () -> use(w))).toList();
  }

  @Override
  public Optional<Message> standing() {
    UnitSystem units = units();
    return switch (shape) {
      case PATH ->
          Optional.of(Message.of("desk.tool.wide", LengthFormat.show(sizes.trench().mm(), units)));
      case ROW ->
          Optional.of(
              Message.of(
                  "desk.tool.mark.row-sizes",
                  LengthFormat.show(sizes.boothLength().mm(), units),
                  LengthFormat.show(sizes.boothDepth().mm(), units),
                  LengthFormat.show(sizes.boothGap().mm(), units)));
      default -> Optional.empty();
    };
  }

  @Override
  public void press(Touch t) {
    make(shaper.press(t));
  }

  @Override
  public void drag(Touch t) {
    shaper.drag(t);
  }

  @Override
  public void release(Touch t) {
    make(shaper.release(t));
    shaper.why().ifPresent(bench.desk()::refuse);
  }

  @Override
  public void hover(Touch t) {
    shaper.hover(t);
  }

  @Override
  public Optional<Message> entry() {
    return shaper.entry();
  }

  @Override
  public Message example() {
    return shaper.example();
  }

  @Override
  public boolean takesPlaces() {
    return shaper.takesPlaces();
  }

  @Override
  public boolean steer(int right, int up) {
    return shaper.steer(right, up);
  }

  @Override
  public Optional<BareUnit> bare() {
    return shaper.bare();
  }

  @Override
  public Optional<String> meaning(String line) {
    return shaper.meaning(line);
  }

  @Override
  public Optional<Message> type(String line) {
    Shaper.Typed typed = shaper.type(line);
    make(typed.forms());
    return typed.why();
  }

  private void make(List<Form> forms) {
    Optional<FloorArea> area = bench.focus().areaOf(bench.desk().site());
    if (forms.isEmpty() || area.isEmpty()) {
      return;
    }
    List<Edit> edits = new ArrayList<>();
    List<PlanItem> picks = new ArrayList<>();
    List<String> taken = new ArrayList<>(area.get().marks().stream().map(Mark::id).toList());
    for (Form form : forms) {
      String id = NewIds.next("m", taken);
      taken.add(id);
      String name = PlainNames.next(area.get(), type, picks.size(), bench.words());
      Mark mark = new Mark(id, name, MarkDefaults.kind(type, bench.words()), form, shaper.wall());
      edits.add(new MarkEdit.Put(area.get().id(), mark));
      picks.add(new PlanItem.OfMark(id));
    }
    Edit edit =
        edits.size() == 1
            ? edits.get(0)
            : new Edit.Several(Message.of("desk.tool.mark-tool.mark-row", type.label()), edits);
    if (bench.desk().push(edit).isOk()) {
      bench.focus().select(picks);
    }
  }

  @Override
  public boolean stepBack() {
    return shaper.stepBack();
  }

  @Override
  public boolean escape() {
    return shaper.stepBack() || shaper.clear();
  }

  @Override
  public Optional<Vec> from() {
    return shaper.from();
  }

  @Override
  public List<Vec> ownCorners() {
    return shaper.corners();
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>(OverlayInks.zero(paper));
    inks.addAll(shaper.over(paper));
    return inks;
  }
}
