package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;

/**
 * Cuts plain inks to a window, by geometry, so that no output needs clip paths: lines end at the
 * window's side, fills are cut along it, and words that would be cut are left out whole.
 */
public final class Clip implements Painter {
  private final Bounds window;
  private final List<PrimitiveInk> kept = new ArrayList<>();

  private Clip(Bounds window) {
    this.window = window;
  }

  /** What of a drawing on paper lies inside the window. */
  public static List<PrimitiveInk> of(Drawing drawing, Bounds window) {
    Clip clip = new Clip(window);
    drawing.paintOn(clip, window);
    return clip.kept;
  }

  @Override
  public void stroke(Stroke s) {
    List<Ring> rings = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    for (Ring r : s.rings()) {
      if (holds(r.bounds())) {
        rings.add(r);
      } else if (window.meets(r.bounds())) {
        List<Vec> closed = new ArrayList<>(r.points());
        closed.add(r.points().get(0));
        cut(closed, lines);
      }
    }
    s.lines().forEach(l -> cut(l.points(), lines));
    if (!rings.isEmpty() || !lines.isEmpty()) {
      kept.add(new Stroke(rings, lines, s.pen()));
    }
  }

  @Override
  public void fill(Fill f) {
    List<Ring> rings = new ArrayList<>();
    for (Ring r : f.rings()) {
      if (holds(r.bounds())) {
        rings.add(r);
      } else if (window.meets(r.bounds())) {
        List<Vec> left = inside(r.points());
        if (left.size() > 2) {
          rings.add(new Ring(left));
        }
      }
    }
    if (!rings.isEmpty()) {
      kept.add(new Fill(rings, f.colour()));
    }
  }

  @Override
  public void text(Text t) {
    if (holds(TextBox.of(t).bounds())) {
      kept.add(t);
    }
  }

  /** A picture that would be cut is left out whole, as words are. */
  @Override
  public void raster(Raster r) {
    if (holds(r.at())) {
      kept.add(r);
    }
  }

  /** The part of a ring in the window, side by side; it stays one ring. */
  private List<Vec> inside(List<Vec> ring) {
    List<Vec> left = SegmentGeometry.cut(ring, p -> p.x() - window.minX());
    left = SegmentGeometry.cut(left, p -> window.maxX() - p.x());
    left = SegmentGeometry.cut(left, p -> p.y() - window.minY());
    return SegmentGeometry.cut(left, p -> window.maxY() - p.y());
  }

  private boolean holds(Bounds b) {
    return b.isEmpty()
        || (window.contains(new Vec(b.minX(), b.minY()))
            && window.contains(new Vec(b.maxX(), b.maxY())));
  }

  /** Adds the runs of the chain that lie inside. */
  private void cut(List<Vec> chain, List<Line> out) {
    List<Vec> run = new ArrayList<>();
    for (int i = 0; i + 1 < chain.size(); i++) {
      List<Vec> part = SegmentClip.inside(chain.get(i), chain.get(i + 1), window);
      if (part.isEmpty()) {
        flush(run, out);
        continue;
      }
      if (!run.isEmpty() && !part.get(0).equals(run.get(run.size() - 1))) {
        flush(run, out);
      }
      if (run.isEmpty()) {
        run.add(part.get(0));
      }
      run.add(part.get(1));
    }
    flush(run, out);
  }

  private static void flush(List<Vec> run, List<Line> out) {
    if (run.size() > 1) {
      out.add(new Line(run));
    }
    run.clear();
  }
}
