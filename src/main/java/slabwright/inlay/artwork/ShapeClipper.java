package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.Arrangement;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Layer;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Window;

/** Painted shapes as layers in mm at one scale, cut by their clips and masks. */
final class ShapeClipper {
  private static final double HALF_BRIGHT = 0.5;

  /** Rounding of single-precision coordinates near a page's edge, well under the grid. */
  private static final double SLACK = 0.0005;

  private final AffineTransform toMm;
  private final double tolerance;
  private final Map<ClipOutlines, Region> clips = new HashMap<>();
  private final Map<ClipOutlines, Optional<Bounds>> boxes = new HashMap<>();
  private final IdentityHashMap<SoftMask, Region> masks = new IdentityHashMap<>();

  ShapeClipper(AffineTransform toMm, double tolerance) {
    this.toMm = toMm;
    this.tolerance = tolerance;
  }

  /** The shape's visible outlines as a layer. */
  Layer layer(int id, PaintedShape shape) {
    List<Ring> rings = rings(shape.outline());
    List<Region> cuts = new ArrayList<>();
    for (ClipOutlines clip : shape.clips()) {
      Optional<Bounds> box = boxes.computeIfAbsent(clip, this::box);
      if (box.isEmpty()) {
        cuts.add(region(clip));
      } else if (!encloses(box.get(), bounds(rings))) {
        rings = BoxClip.clip(rings, box.get());
      }
    }
    for (SoftMask mask : shape.masks()) {
      cuts.add(through(mask));
    }
    if (cuts.isEmpty()) {
      return new Layer(id, rings, rule(shape.outline()));
    }
    CrossingBudget.check(rings);
    Region seen = Region.of(rings, rule(shape.outline()));
    for (Region cut : cuts) {
      seen = seen.intersect(cut);
    }
    return Layer.of(id, seen);
  }

  /** What clips and masks let through of a shape; nothing where it has none. */
  Optional<Window> window(PaintedShape shape) {
    List<Region> cuts = new ArrayList<>();
    shape.clips().forEach(c -> cuts.add(region(c)));
    shape.masks().forEach(m -> cuts.add(through(m)));
    return cuts.stream().reduce(Region::intersect).map(Window::new);
  }

  /** Where a clip lets through. */
  Region region(ClipOutlines clip) {
    Region known = clips.get(clip);
    if (known != null) {
      return known;
    }
    List<Region> parts = new ArrayList<>();
    for (ClipOutlines.Part part : clip.parts()) {
      List<Ring> rings = rings(part.outline());
      CrossingBudget.check(rings);
      Region whole = Region.of(rings, rule(part.outline()));
      parts.add(part.inside().map(c -> whole.intersect(region(c))).orElse(whole));
    }
    Region union = parts.size() == 1 ? parts.get(0) : Region.union(parts);
    Region made = clip.inside().map(c -> union.intersect(region(c))).orElse(union);
    clips.put(clip, made);
    return made;
  }

  private Region through(SoftMask mask) {
    Region known = masks.get(mask);
    if (known != null) {
      return known;
    }
    Region made = bright(mask);
    masks.put(mask, made);
    return made;
  }

  private Region bright(SoftMask mask) {
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i < mask.painted().size(); i++) {
      layers.add(layer(i, mask.painted().get(i)));
    }
    CrossingBudget.check(layers.stream().flatMap(l -> l.rings().stream()).toList());
    Map<Boolean, Region> seen =
        Arrangement.of(layers)
            .partition(
                active ->
                    active.isEmpty()
                        ? Optional.empty()
                        : Optional.of(isBright(mask.painted().get(active.top()))));
    return seen.getOrDefault(true, Region.empty()).intersect(region(mask.extent()));
  }

  /** Luminance as SVG 1.1, section 14.4, times alpha. */
  private static boolean isBright(PaintedShape s) {
    Rgba c = Rgba.ofHex(s.hex());
    double luminance = (0.2125 * c.r() + 0.7154 * c.g() + 0.0721 * c.b()) / 255;
    return luminance * s.alpha() >= HALF_BRIGHT;
  }

  private List<Ring> rings(Path2D outline) {
    return PathFlattener.rings(outline, toMm, tolerance);
  }

  private static FillRule rule(Path2D outline) {
    return outline.getWindingRule() == PathIterator.WIND_EVEN_ODD
        ? FillRule.EVEN_ODD
        : FillRule.NONZERO;
  }

  /** The clip as an upright box, when it is one. */
  private Optional<Bounds> box(ClipOutlines clip) {
    if (clip.parts().size() != 1
        || clip.inside().isPresent()
        || clip.parts().get(0).inside().isPresent()) {
      return Optional.empty();
    }
    List<Ring> rings = rings(clip.parts().get(0).outline());
    if (rings.size() != 1 || rings.get(0).points().size() > 5) {
      return Optional.empty();
    }
    Bounds outer = rings.get(0).bounds();
    double whole = outer.width() * outer.height();
    boolean fills = Math.abs(rings.get(0).signedArea()) >= whole * (1 - 1e-12);
    return fills ? Optional.of(outer) : Optional.empty();
  }

  private static boolean encloses(Bounds outer, Bounds inner) {
    return inner.minX() >= outer.minX() - SLACK
        && inner.minY() >= outer.minY() - SLACK
        && inner.maxX() <= outer.maxX() + SLACK
        && inner.maxY() <= outer.maxY() + SLACK;
  }

  private static Bounds bounds(List<Ring> rings) {
    Bounds b = Bounds.EMPTY;
    for (Ring r : rings) {
      b = b.including(r.bounds());
    }
    return b;
  }
}
