package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.ErrorEllipse;
import slabwright.tape.ReadingReport;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/**
 * How well a taped room is known, as inks in the site's frame: an ellipse about every corner, drawn
 * many times as large, the lines taped across, and in red what should be measured again. The desk
 * and the tape's own sheet draw the same ones.
 */
public final class TapeInks {
  /** A change smaller than this is none to anybody with a tape, mm. */
  private static final double SHOWN = 0.5;

  /** From one standard deviation to the ellipse that holds a corner in 95 % of cases. */
  private static final double SURE = Math.sqrt(-2 * Math.log(0.05));

  /** The share of the room's size that its largest ellipse comes near to. */
  private static final double LARGE = 0.05;

  private static final int MOST_WORDS = 40;
  private static final Pen ACROSS = Pen.of(0.25, Palette.BLUE).dashed(2, 1.2);
  private static final Pen DOUBT = Pen.of(0.9, Palette.RED);
  private static final Pen RIM = Pen.of(0.3, Palette.PURPLE);

  private final AdjustedRoom room;
  private final Affine placing;
  private final TapeLines lines;
  private final double times;

  /**
   * The inks of a room.
   *
   * @param placing from the room's frame to the site's
   */
  public TapeInks(AdjustedRoom room, Affine placing) {
    this.room = room;
    this.placing = placing;
    lines = new TapeLines(room, placing);
    times = round(largest());
  }

  private double largest() {
    Bounds b = Bounds.of(lines.corners());
    double size = Math.hypot(b.width(), b.height());
    double major =
        room.corners().stream()
            .flatMap(c -> c.ellipse().stream())
            .mapToDouble(e -> SURE * e.major())
            .max()
            .orElse(0);
    return major == 0 ? 1 : LARGE * size / major;
  }

  /** Down to 1, 2 or 5 times a power of ten, at least 1. */
  private static double round(double v) {
    double ten = Math.pow(10, Math.floor(Math.log10(Math.max(1, v))));
    double lead = v / ten;
    return Math.max(1, ten * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1));
  }

  /** How many times as large as they are the ellipses are drawn. */
  public double times() {
    return times;
  }

  /** What the ellipses say, for the key and the card. */
  public String about(Words words) {
    if (room.corners().stream().noneMatch(c -> c.ellipse().isPresent())) {
      return words.say("figures.tape-inks.not-known");
    }
    return words.say("figures.tape-inks.ellipses", times);
  }

  /** The readings that run across the room. */
  public List<Line> across() {
    return room.readings().stream()
        .filter(r -> !lines.isWall(r))
        .flatMap(r -> lines.of(r).stream())
        .toList();
  }

  /** Ellipses, lines across and doubted readings; no words. */
  public List<Ink> inks() {
    List<Ink> inks = new ArrayList<>();
    List<Integer> doubted = lines.doubted();
    for (ReadingReport r : room.readings()) {
      boolean doubt = doubted.contains(r.index());
      if (doubt || !lines.isWall(r)) {
        lines.of(r).ifPresent(l -> inks.add(Stroke.lines(doubt ? DOUBT : ACROSS, List.of(l))));
      }
    }
    for (int i = 0; i < room.corners().size(); i++) {
      Vec at = lines.corners().get(i);
      Optional<Ring> ring = room.corners().get(i).ellipse().map(e -> ring(e, at));
      ring.ifPresent(
          e -> {
            inks.add(Fill.of(Palette.tint(Palette.PURPLE), e));
            inks.add(Stroke.rings(RIM, List.of(e)));
          });
      inks.add(Symbol.of(Symbol.Kind.POINT, at, 1.6, Palette.PURPLE));
    }
    return inks;
  }

  private Ring ring(ErrorEllipse e, Vec at) {
    double turn = placing.apply(new Vec(1, 0)).minus(placing.apply(Vec.ZERO)).angle();
    double a = SURE * times * e.major();
    double b = Math.max(SURE * times * e.minor(), a / 50);
    Vec along = unit(Math.toRadians(e.bearing()) + turn).times(a);
    Vec across = unit(Math.toRadians(e.bearing()) + turn + Math.PI / 2).times(b);
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < 48; i++) {
      double t = 2 * Math.PI * i / 48;
      points.add(at.plus(along.times(Math.cos(t))).plus(across.times(Math.sin(t))));
    }
    return new Ring(points);
  }

  private static Vec unit(double angle) {
    return new Vec(Math.cos(angle), Math.sin(angle));
  }

  /** Words of the picture: corners by name and residuals, each with the point it speaks of. */
  public record TapeLabel(Vec at, Vec inwards, String words, boolean corner, boolean doubted) {}

  /** The words: every corner, and residuals of lengths, those that stand out most first. */
  public List<TapeLabel> labels(UnitSystem units) {
    List<TapeLabel> all = new ArrayList<>();
    double side = room.counterClockwise() ? 1 : -1;
    List<Integer> doubted = lines.doubted();
    room.readings().stream()
        .filter(r -> lines.of(r).isPresent() && Math.abs(r.residual()) >= SHOWN)
        .sorted((a, b) -> Double.compare(Math.abs(b.statistic()), Math.abs(a.statistic())))
        .limit(MOST_WORDS)
        .forEach(r -> all.add(residual(r, side, doubted.contains(r.index()), units)));
    int n = lines.corners().size();
    for (int i = 0; i < n; i++) {
      Vec at = lines.corners().get(i);
      Vec before = lines.corners().get((i + n - 1) % n);
      Vec after = lines.corners().get((i + 1) % n);
      Vec inwards = at.minus(before).unit().left().plus(after.minus(at).unit().left()).times(side);
      all.add(new TapeLabel(at, inwards, room.corners().get(i).name(), true, false));
    }
    return all;
  }

  private TapeLabel residual(ReadingReport r, double side, boolean doubt, UnitSystem units) {
    List<Vec> ends = lines.of(r).orElseThrow().points();
    Vec inwards = ends.get(1).minus(ends.get(0)).unit().left().times(side);
    String words = (r.residual() > 0 ? "+" : "") + r.shownResidual(units);
    return new TapeLabel(ends.get(0).towards(ends.get(1), 0.5), inwards, words, false, doubt);
  }
}
