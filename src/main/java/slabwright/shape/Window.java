package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A window that outlines show through. What it doesn't hide stays as it was drawn, to the corner.
 */
public final class Window {
  /** Twice the grid: a clip that was drawn along an edge hides nothing of it. */
  private static final double SLACK = 0.002;

  /** A line has a width, so one along the window's edge is seen. */
  private static final double LINE_SEEN = 0.05;

  private final Region through;
  private final boolean upright;
  private Optional<Region> throughForLines = Optional.empty();

  public Window(Region through) {
    this.through = through;
    Bounds b = through.bounds();
    upright = !through.isEmpty() && through.area() >= b.width() * b.height() * (1 - 1e-12);
  }

  /** What shows of filled outlines; nothing where all of them does. */
  public Optional<Region> cut(List<Ring> rings, FillRule rule) {
    if (isSeenWhole(bounds(rings))) {
      return Optional.empty();
    }
    Region whole = Region.of(rings, rule);
    Region seen = whole.intersect(through);
    boolean hidden = whole.area() - seen.area() > SLACK * whole.boundaryLength();
    return Optional.of(seen).filter(s -> hidden);
  }

  /** The stretches of a line that show; nothing where all of it does. */
  public Optional<List<Line>> cut(Line line) {
    if (isSeenWhole(Bounds.of(line.points()))) {
      return Optional.empty();
    }
    Region wider = throughForLines.orElseGet(() -> through.offset(LINE_SEEN, LINE_SEEN / 5));
    throughForLines = Optional.of(wider);
    List<Line> seen = wider.clip(line);
    double length = seen.stream().mapToDouble(Line::length).sum();
    return Optional.of(seen).filter(s -> line.length() - length > SLACK);
  }

  /** The same for a line that closes. */
  public Optional<List<Line>> cut(Ring closed) {
    List<Vec> around = new ArrayList<>(closed.points());
    around.add(around.get(0));
    return cut(new Line(around));
  }

  private boolean isSeenWhole(Bounds drawn) {
    Bounds seen = through.bounds().grown(SLACK);
    return upright && seen.including(drawn).equals(seen);
  }

  private static Bounds bounds(List<Ring> rings) {
    Bounds all = Bounds.EMPTY;
    for (Ring r : rings) {
      all = all.including(r.bounds());
    }
    return all;
  }
}
