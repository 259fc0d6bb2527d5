package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import slabwright.shape.Arrangement;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Layer;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.near.BoxIndex;
import slabwright.units.CieLab;

/**
 * The drawing as contours, and what lies between them.
 *
 * @param shaded whether anything is filled in a colour that shows on white
 * @param told whether our own layers say what is weeded, shaded or not
 * @param area what is shaded; with nothing shaded, what an odd number of lines surrounds
 * @param rings every contour once, areas and lines alike
 */
record DrawingContours(boolean shaded, boolean told, Region area, List<RingMoments> rings) {
  /** CIE L* from which a fill is taken for paper. */
  static final double PAPER = 97;

  private static final double SAME = 1e-4;
  private static final double SAME_MM = 0.05;

  static DrawingContours of(ShopDrawing drawing) {
    Region shade = shade(drawing);
    NewContours rings = new NewContours();
    shade.rings().forEach(r -> rings.add(RingMoments.of(r)));
    List<Ring> lines = new ArrayList<>();
    for (ShopDrawing.Piece piece : drawing.pieces()) {
      if (!isDark(piece)) {
        for (Ring ring : piece.rings()) {
          RingMoments shape = RingMoments.of(ring);
          if (rings.add(shape)) {
            lines.add(ring);
          }
        }
      }
    }
    boolean edges = drawing.has(ShopDrawing.Role.OPENING_EDGE);
    if (!shade.isEmpty()) {
      return new DrawingContours(true, drawing.has(ShopDrawing.Role.WEEDED), shade, rings.all);
    }
    List<Ring> bounding = edges ? openingEdges(drawing) : lines;
    return new DrawingContours(false, edges, Region.of(bounding, FillRule.EVEN_ODD), rings.all);
  }

  /** The lines of our own layer, and whatever else is drawn amid them. */
  private static List<Ring> openingEdges(ShopDrawing drawing) {
    List<Ring> own = new ArrayList<>();
    Bounds around = Bounds.EMPTY;
    for (ShopDrawing.Piece piece : drawing.pieces()) {
      if (piece.role() == ShopDrawing.Role.OPENING_EDGE) {
        own.addAll(piece.rings());
      }
    }
    for (Ring ring : own) {
      around = around.including(ring.bounds());
    }
    Bounds amid = around;
    drawing.pieces().stream()
        .filter(p -> p.role() == ShopDrawing.Role.UNKNOWN)
        .flatMap(p -> p.rings().stream())
        .filter(r -> amid.including(r.bounds()).equals(amid))
        .forEach(own::add);
    return own;
  }

  Bounds bounds() {
    Bounds b = Bounds.EMPTY;
    for (RingMoments r : rings) {
      b = b.including(r.ring().bounds());
    }
    return b;
  }

  private static Region shade(ShopDrawing drawing) {
    List<ShopDrawing.Piece> filled =
        drawing.pieces().stream().filter(p -> p.fill().isPresent()).toList();
    List<Layer> layers =
        IntStream.range(0, filled.size())
            .mapToObj(i -> new Layer(i, filled.get(i).rings(), filled.get(i).rule()))
            .toList();
    Map<Boolean, Region> seen =
        Arrangement.of(layers)
            .partition(
                active ->
                    active.isEmpty()
                        ? Optional.empty()
                        : Optional.of(isDark(filled.get(active.top()))));
    return seen.getOrDefault(true, Region.empty());
  }

  private static boolean isDark(ShopDrawing.Piece piece) {
    return piece.fill().map(hex -> CieLab.ofHex(hex).l() < PAPER).orElse(false);
  }

  /** Contours once each; the same outline is often drawn as fill and as line. */
  private static final class NewContours {
    private final List<RingMoments> all = new ArrayList<>();
    private final BoxIndex<Boxed> byCorner = new BoxIndex<>();

    private record Boxed(Bounds box, double area) {}

    /** Whether the contour was not there yet. */
    boolean add(RingMoments shape) {
      if (shape.area() <= 0) {
        return false;
      }
      Bounds box = shape.ring().bounds();
      Bounds corner = Bounds.of(List.of(new Vec(box.minX(), box.minY())));
      double near = Math.max(SAME_MM, SAME * Math.max(box.width(), box.height()));
      double most = near * shape.ring().length();
      boolean known =
          byCorner.any(
              corner.grown(near),
              b -> Math.abs(b.area - shape.area()) <= most && same(b.box, box, near));
      if (!known) {
        all.add(shape);
        byCorner.add(corner, new Boxed(box, shape.area()));
      }
      return !known;
    }
  }

  private static boolean same(Bounds a, Bounds b, double near) {
    return Math.abs(a.minX() - b.minX()) <= near
        && Math.abs(a.minY() - b.minY()) <= near
        && Math.abs(a.maxX() - b.maxX()) <= near
        && Math.abs(a.maxY() - b.maxY()) <= near;
  }
}
