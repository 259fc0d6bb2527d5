package slabwright.pdfin.outline;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import slabwright.pdfin.page.PdfBudget;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.Window;

/** What a page's clips let through, in the outlines' frame. */
final class PdfWindows {
  /** A page's point in mm. */
  interface Frame {
    Vec mm(double x, double y);
  }

  private final Frame frame;
  private final PdfBudget budget;

  /** In the page's own units, where clips are hardly ever curved. */
  private final double flatness;

  // paths are told apart by identity
  private final Map<Path2D, Region> regions = new HashMap<>();
  private final Map<List<Path2D>, Optional<Window>> windows = new HashMap<>();

  PdfWindows(Frame frame, double flatness, PdfBudget budget) {
    this.frame = frame;
    this.flatness = flatness;
    this.budget = budget;
  }

  /** What shows inside all of the clips; nothing where there is none. */
  Optional<Window> of(List<Path2D> clips) {
    List<Path2D> own = List.copyOf(clips);
    Optional<Window> known = windows.get(own);
    if (known == null) {
      BinaryOperator<Region> both = Region::intersect;
      known = own.stream().map(this::region).reduce(both).map(Window::new);
      windows.put(own, known);
    }
    return known;
  }

  private Region region(Path2D clip) {
    Region known = regions.get(clip);
    if (known == null) {
      List<Ring> rings = rings(clip);
      budget.crossings(rings);
      boolean evenOdd = clip.getWindingRule() == PathIterator.WIND_EVEN_ODD;
      known = Region.of(rings, evenOdd ? FillRule.EVEN_ODD : FillRule.NONZERO);
      regions.put(clip, known);
    }
    return known;
  }

  private List<Ring> rings(Path2D clip) {
    List<List<Vec>> parts = new ArrayList<>();
    double[] c = new double[6];
    for (PathIterator it = clip.getPathIterator(null, flatness); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      if (kind == PathIterator.SEG_MOVETO) {
        parts.add(new ArrayList<>());
      }
      if (kind != PathIterator.SEG_CLOSE) {
        parts.get(parts.size() - 1).add(frame.mm(c[0], c[1]));
      }
    }
    return parts.stream().filter(p -> p.size() >= 3).map(Ring::new).toList();
  }
}
