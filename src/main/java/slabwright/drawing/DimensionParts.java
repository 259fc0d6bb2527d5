package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/** The lines and words of one dimension, on paper (y down). */
final class DimensionParts {
  private static final double LINE = 0.22;
  private static final double END_BAR = 1.4;
  private static final double STAND_OFF = 1.2;
  private static final double PAST = 1;
  private static final double GAP = 1.2;

  private final Dimension d;
  private final Vec along;
  private final Vec left;
  private final Vec start;
  private final Vec end;
  private final double room;
  private final double wide;

  DimensionParts(Dimension d) {
    this.d = d;
    this.along = d.to().minus(d.from()).unit();
    this.left = new Vec(along.y(), -along.x());
    this.start = d.from().plus(left.times(d.offset()));
    this.end = d.to().plus(left.times(d.offset()));
    this.room = start.distanceTo(end);
    this.wide = TextMeasure.width(d.words(), d.style());
  }

  List<PrimitiveInk> parts() {
    Pen pen = Pen.of(LINE, d.style().colour());
    List<PrimitiveInk> parts = new ArrayList<>();
    parts.add(Stroke.lines(Pen.of(0.1, Palette.SOFT), extensions()));
    List<Line> lines = new ArrayList<>();
    lines.add(bar(start));
    lines.add(bar(end));
    if (fitsInside()) {
      double half = wide / 2 + GAP;
      Vec middle = start.towards(end, 0.5);
      lines.add(Line.of(start, middle.minus(along.times(half))));
      lines.add(Line.of(middle.plus(along.times(half)), end));
    } else {
      lines.add(Line.of(start, end));
    }
    parts.add(Stroke.lines(pen, lines));
    parts.add(Text.centred(textMiddle(), d.words(), d.style(), turn()));
    return parts;
  }

  private boolean fitsInside() {
    return room >= wide + 2 * GAP + 3;
  }

  /** In the gap; too short a line carries its words above itself, or beyond its end. */
  private Vec textMiddle() {
    Vec middle = start.towards(end, 0.5);
    if (fitsInside()) {
      return middle;
    }
    double side = d.offset() < 0 ? -1 : 1;
    return room >= wide
        ? middle.plus(left.times(side * d.style().size() * 0.75))
        : end.plus(along.times(wide / 2 + GAP));
  }

  /** Words read level or from the bottom up, never upside down. */
  private double turn() {
    double degrees = Math.toDegrees(Math.atan2(-along.y(), along.x()));
    if (degrees > 90 + 1e-6) {
      return degrees - 180;
    }
    return degrees <= -90 + 1e-6 ? degrees + 180 : degrees;
  }

  private Line bar(Vec at) {
    return Line.of(at.plus(left.times(END_BAR)), at.minus(left.times(END_BAR)));
  }

  /** Hairlines from the measured points out to the line, when that stands clear of them. */
  private List<Line> extensions() {
    if (Math.abs(d.offset()) <= STAND_OFF + PAST) {
      return List.of();
    }
    Vec out = left.times(Math.signum(d.offset()));
    return List.of(extension(d.from(), start, out), extension(d.to(), end, out));
  }

  private static Line extension(Vec point, Vec line, Vec out) {
    return Line.of(point.plus(out.times(STAND_OFF)), line.plus(out.times(PAST)));
  }
}
