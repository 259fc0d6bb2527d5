package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.FloorPictureMaker;
import slabwright.desk.model.scene.PlanItemShape;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.SegmentClip;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.drawing.label.Label;
import slabwright.drawing.label.LabelPlacer;
import slabwright.figures.MarkStyles;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Inlay;
import slabwright.site.Mark;

/**
 * The names of marks and doorways, each on a plate clear of the others; one that finds no room at
 * the scale is left out until one looks closer. Frame: the site's; kept for one scale.
 */
final class NameInks {
  private static final TextStyle WORDS = TextStyle.bold(2.5);
  private static final TextStyle DOOR = TextStyle.bold(2.6).in(MarkStyles.WAY_IN.colour());
  private static final int MOST = 60;

  /** Height of a name's box, and what is kept free beside an arrow, mm of paper. */
  private static final double HIGH = 3.4;

  private static final double CLEAR = 1;

  /** Half the width of the sign of a mark that is a place, mm. */
  private static final double SIGN = 2.2;

  /** Half of what a handle takes, mm. */
  private static final double HANDLE = 1.3;

  /** How far the name of what is picked may move to be read, mm. */
  private static final double REACH = 16;

  /**
   * What is written there before, mm on the site.
   *
   * @param boxes of words
   * @param lines that no name lies on
   */
  public record Taken(List<Bounds> boxes, List<Line> lines) {
    public static final Taken NOTHING = new Taken(List.of(), List.of());

    public Taken {
      boxes = List.copyOf(boxes);
      lines = List.copyOf(lines);
    }
  }

  /**
   * What names are placed for; they are placed anew when it changes.
   *
   * @param mm site millimetres to one of paper
   * @param marks whether marks are named too, or doorways alone
   * @param dimensions how many lengths are written
   * @param picked their names come first, and no name lies on their outlines
   * @param handles where what is picked can be held
   */
  record Wanted(
      FloorPicture picture,
      double mm,
      boolean marks,
      int dimensions,
      List<PlanItem> picked,
      List<Vec> handles) {
    Wanted {
      picked = List.copyOf(picked);
      handles = List.copyOf(handles);
    }

    boolean isPicked(Mark m) {
      return picked.contains(new PlanItem.OfMark(m.id()));
    }
  }

  private Optional<Wanted> of = Optional.empty();
  private List<Ink> inks = List.of();

  /**
   * The names as they are wanted.
   *
   * @param taken what they keep clear of
   */
  public List<Ink> of(Wanted wanted, Supplier<Taken> taken) {
    if (!of.equals(Optional.of(wanted))) {
      of = Optional.of(wanted);
      inks = new Placing(wanted, taken.get()).place();
    }
    return inks;
  }

  /** Places the names of one picture; paper frame is the site's shrunk by the scale, y down. */
  private static final class Placing {
    private final Wanted wanted;
    private final FloorPicture picture;
    private final double mm;
    private final List<Bounds> graphics;
    private final List<Line> walls = new ArrayList<>();
    private final LabelPlacer labels;
    private final List<Ink> inks = new ArrayList<>();

    Placing(Wanted wanted, Taken taken) {
      this.wanted = wanted;
      this.picture = wanted.picture();
      this.mm = wanted.mm();
      Bounds b = picture.bounds().grown(60 * mm);
      this.labels = new LabelPlacer(box(b), 0.6);
      this.graphics = picture.area().inlays().stream().map(i -> box(square(i))).toList();
      picture.shape().pieces().forEach(this::wall);
      taken.boxes().forEach(t -> labels.avoid(box(t)));
      CornerLetters.boxes(picture, mm).forEach(t -> labels.avoid(box(t)));
      wanted.handles().forEach(h -> labels.avoid(around(paper(h), HANDLE)));
      wanted.picked().stream().flatMap(p -> picture.thing(p).stream()).forEach(this::keepOff);
      for (Line line : taken.lines()) {
        List<Vec> ends = line.points();
        labels.avoid(paper(ends.get(0)), paper(ends.get(ends.size() - 1)));
      }
      picture.things().stream()
          .filter(t -> t.path().size() == 1)
          .map(t -> paper(t.path().get(0)))
          .forEach(v -> labels.avoid(around(v, SIGN)));
      picture.area().doorways().forEach(d -> way(d).ifPresent(this::keepClear));
    }

    /** A graphic's height is not known before it is read: as much as its width. */
    private static Bounds square(Inlay i) {
      double half = i.width().mm() / 2;
      Vec m = i.middle().vec();
      return new Bounds(m.x() - half, m.y() - half, m.x() + half, m.y() + half);
    }

    private void wall(Line piece) {
      for (int i = 0; i + 1 < piece.points().size(); i++) {
        walls.add(Line.of(paper(piece.points().get(i)), paper(piece.points().get(i + 1))));
      }
    }

    private void keepOff(PlanItemShape picked) {
      picked.region().rings().forEach(r -> labels.avoid(paper(r)));
      for (int i = 0; i + 1 < picked.path().size(); i++) {
        labels.avoid(paper(picked.path().get(i)), paper(picked.path().get(i + 1)));
      }
    }

    private static Bounds around(Vec v, double by) {
      return new Bounds(v.x() - by, v.y() - by, v.x() + by, v.y() + by);
    }

    /** The dashes of a way in and its arrow stay clear of all names. */
    private void keepClear(Way w) {
      labels.avoid(w.from(), w.to());
      labels.avoid(around(w.arrow(), FloorPictureMaker.ARROW / 2));
    }

    /** A way in on paper: its opening, the middle of its arrow, and which way is out, length 1. */
    private record Way(Vec from, Vec to, Vec arrow, Vec out) {}

    private Optional<Way> way(Doorway d) {
      List<Vec> gap = picture.shape().doorway(d).points();
      if (gap.size() < 2 || !d.wayIn()) {
        return Optional.empty();
      }
      Vec a = gap.get(0);
      Vec b = gap.get(gap.size() - 1);
      Vec out = b.minus(a).unit().left().times(picture.shape().floorOnLeft() ? -1 : 1);
      Vec arrow = a.towards(b, 0.5).plus(out.times(FloorPictureMaker.ARROW_OUT));
      return Optional.of(new Way(paper(a), paper(b), paper(arrow), new Vec(out.x(), -out.y())));
    }

    private Bounds box(Bounds b) {
      return new Bounds(b.minX() / mm, -b.maxY() / mm, b.maxX() / mm, -b.minY() / mm);
    }

    private Ring paper(Ring r) {
      return new Ring(r.points().stream().map(this::paper).toList());
    }

    private Vec paper(Vec site) {
      return new Vec(site.x() / mm, -site.y() / mm);
    }

    private Vec site(Vec paper) {
      return new Vec(paper.x() * mm, -paper.y() * mm);
    }

    List<Ink> place() {
      picture.area().doorways().forEach(this::doorway);
      picture.area().marks().stream()
          .filter(m -> wanted.marks() && !m.name().isBlank())
          .filter(m -> picture.area().marks().size() <= MOST || wanted.isPicked(m) || fits(m))
          .sorted(Comparator.comparing(m -> !wanted.isPicked(m)))
          .forEach(this::mark);
      return inks;
    }

    private boolean fits(Mark m) {
      return thing(m).map(t -> t.bounds().width() / mm > width(m.name())).orElse(false);
    }

    private static double width(String words) {
      return TextMeasure.width(words, WORDS) + 1.6;
    }

    private Optional<PlanItemShape> thing(Mark m) {
      return picture.thing(new PlanItem.OfMark(m.id()));
    }

    private void mark(Mark m) {
      thing(m).ifPresent(t -> mark(m, t));
    }

    private void mark(Mark m, PlanItemShape t) {
      Bounds b = box(t.bounds());
      double w = width(m.name());
      double away = t.path().size() == 1 ? 4.6 : 2.4;
      Vec below = new Vec(b.middle().x(), b.maxY() + away);
      Vec above = new Vec(b.middle().x(), b.minY() - away);
      boolean inside = !t.region().isEmpty() && b.width() > w && b.height() > 3.4;
      Vec middle = inside ? paper(t.middle()) : below;
      if (inside && (middle.x() - w / 2 < b.minX() || middle.x() + w / 2 > b.maxX())) {
        middle = new Vec(b.middle().x(), middle.y());
      }
      Vec right = new Vec(b.maxX() + w / 2 + away - 0.6, b.middle().y());
      Vec left = new Vec(b.minX() - w / 2 - away + 0.6, b.middle().y());
      Vec begins = new Vec(b.minX() + w / 2, 0);
      Vec ends = new Vec(b.maxX() - w / 2, 0);
      List<Vec> wishes = new ArrayList<>(List.of(middle, below, above, right, left));
      for (Vec row : List.of(below, above)) {
        wishes.add(new Vec(begins.x(), row.y()));
        wishes.add(new Vec(ends.x(), row.y()));
      }
      wishes.sort(Comparator.comparing(v -> hidden(v, w)));
      Label label = Label.box(middle, w, HIGH, 0).wishing(wishes);
      if (wanted.isPicked(m)) {
        Vec about = t.region().isEmpty() ? below : paper(t.middle());
        label = Label.box(about, w, HIGH, REACH);
      }
      labels.place(label.nearBy(REACH + w)).ifPresent(p -> plate(p.middle(), m.name(), WORDS, w));
    }

    /** How much a name would hide: 2 a graphic, 1 a wall, which it does where all else is taken. */
    private int hidden(Vec middle, double w) {
      Bounds b =
          new Bounds(
              middle.x() - w / 2, middle.y() - HIGH / 2, middle.x() + w / 2, middle.y() + HIGH / 2);
      boolean onWall =
          walls.stream().anyMatch(s -> SegmentClip.meets(s.points().get(0), s.points().get(1), b));
      return (graphics.stream().anyMatch(b::meets) ? 2 : 0) + (onWall ? 1 : 0);
    }

    private void doorway(Doorway d) {
      if (!d.name().isBlank()) {
        way(d).ifPresent(w -> name(d.name(), w));
      }
    }

    /** Beside the arrow, where no line to another floor's doorway runs; else beyond it. */
    private void name(String words, Way way) {
      double w = TextMeasure.width(words, DOOR) + 1.6;
      Vec out = way.out();
      Vec along = out.left();
      double half = Math.abs(along.x()) * w / 2 + Math.abs(along.y()) * HIGH / 2;
      double deep = Math.abs(out.x()) * w / 2 + Math.abs(out.y()) * HIGH / 2;
      double aside = FloorPictureMaker.ARROW / 2 + CLEAR + half;
      Vec door = way.from().towards(way.to(), 0.5).plus(out.times(deep + CLEAR));
      Vec arrow = way.arrow();
      List<Vec> wishes =
          List.of(
              arrow.plus(along.times(aside)),
              arrow.minus(along.times(aside)),
              door.plus(along.times(aside)),
              door.minus(along.times(aside)),
              arrow.plus(out.times(FloorPictureMaker.ARROW / 2 + CLEAR + deep)));
      labels
          .place(Label.box(arrow, w, HIGH, 9).wishing(wishes).nearBy(12))
          .ifPresent(p -> inks.add(Text.middle(foot(p.middle()), words, DOOR)));
    }

    private Vec foot(Vec middle) {
      return site(new Vec(middle.x(), middle.y() + WORDS.size() * TextMeasure.CAP_HEIGHT / 2));
    }

    private void plate(Vec middle, String words, TextStyle style, double w) {
      Vec a = site(new Vec(middle.x() - w / 2, middle.y() + 1.75));
      Vec b = site(new Vec(middle.x() + w / 2, middle.y() - 1.75));
      Bounds box = new Bounds(a.x(), a.y(), b.x(), b.y());
      inks.add(Fill.of(Palette.WHITE, box));
      inks.add(
          Stroke.rings(
              Pen.of(0.12, Palette.RULE),
              List.of(Ring.rectangle(box.minX(), box.minY(), box.maxX(), box.maxY()))));
      inks.add(Text.middle(foot(middle), words, style));
    }
  }
}
