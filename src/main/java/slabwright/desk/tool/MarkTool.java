package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.Bench;
import slabwright.desk.model.NewIds;
import slabwright.desk.model.Pick;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.Edit;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkEdit;
import slabwright.site.MarkType;
import slabwright.units.UnitSystem;

/** Draws marks of one kind; the way of drawing is one of a few that suit it. */
public final class MarkTool implements Tool {
  private final Bench bench;
  private final Shown shown;
  private final Sizes sizes;
  private final MarkType type;
  private MarkShape shape;
  private Shaper shaper;

  public MarkTool(Bench bench, Shown shown, Sizes sizes, MarkType type) {
    this.bench = bench;
    this.shown = shown;
    this.sizes = sizes;
    this.type = type;
    this.shape = MarkShape.of(type).get(0);
    this.shaper = shaper(shape);
  }

  private Shaper shaper(MarkShape s) {
    return switch (s) {
      case PATH, LINE, CORNERS -> new ChainShaper(s, sizes);
      case RECTANGLE, ROUND, ROUND_ENDED -> new BoxShaper(s);
      case FREEHAND -> new FreehandShaper();
      case WALL_TO_WALL -> new WholeShaper(shown);
      case ROW -> new RowShaper(shown, sizes);
      case POINT -> new PointShaper();
    };
  }

  private void use(MarkShape s) {
    shape = s;
    shaper = shaper(s);
  }

  @Override
  public String prompt() {
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
  public String standing() {
    UnitSystem units = bench.desk().site().units();
    return switch (shape) {
      case PATH -> new Paper(1, units).length(sizes.trench().mm()) + " wide";
      case ROW ->
          new Paper(1, units).length(sizes.boothLength().mm())
              + " × "
              + new Paper(1, units).length(sizes.boothDepth().mm())
              + ", gap "
              + new Paper(1, units).length(sizes.boothGap().mm());
      default -> "";
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
  }

  @Override
  public void hover(Touch t) {
    shaper.hover(t);
  }

  @Override
  public Optional<String> entry() {
    return shaper.entry();
  }

  @Override
  public String example() {
    return shaper.example();
  }

  @Override
  public boolean steer(int right, int up) {
    return shaper.steer(right, up);
  }

  @Override
  public Optional<String> type(String line) {
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
    List<Pick> picks = new ArrayList<>();
    List<String> taken = new ArrayList<>(area.get().marks().stream().map(Mark::id).toList());
    for (Form form : forms) {
      String id = NewIds.next("m", taken);
      taken.add(id);
      Mark mark = new Mark(id, "", NewMarks.kind(type), form, shaper.wall());
      edits.add(new MarkEdit.Put(area.get().id(), mark));
      picks.add(new Pick.OfMark(id));
    }
    Edit edit =
        edits.size() == 1 ? edits.get(0) : new Edit.Several("mark " + type.word() + " row", edits);
    if (bench.desk().push(edit).isDone()) {
      bench.focus().pick(picks);
    }
  }

  @Override
  public boolean stepBack() {
    return shaper.stepBack();
  }

  @Override
  public boolean escape() {
    return shaper.clear();
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
  public List<Ink> over(Paper paper) {
    List<Ink> inks = new ArrayList<>(Overlays.zero(paper));
    inks.addAll(shaper.over(paper));
    return inks;
  }
}
