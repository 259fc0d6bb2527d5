package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** One making of a stencil set. */
final class StencilSetBuilder {
  private static final double ARC_TOLERANCE = 0.05;

  /** Beyond this a drawing is shaded, not coloured; nobody lays that many films over each other. */
  private static final int MOST = 48;

  private final List<DyeLayer> layers;
  private final StencilParameters rules;
  private final List<FixEffect> changes = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  StencilSetBuilder(List<DyeLayer> layers, StencilParameters rules) {
    this.layers = rules.perColour() ? layers : asOne(layers);
    this.rules = rules;
  }

  StencilSet make() {
    Bounds painted = Bounds.EMPTY;
    for (DyeLayer layer : layers) {
      painted = painted.including(layer.artwork().bounds());
    }
    if (painted.isEmpty()) {
      findings.add(Finding.cannot(Message.of("inlay.stencil-set-builder.no-colour-dyed")));
      return StencilSet.of(Bounds.EMPTY, Vec.ZERO, List.of(), List.of(), findings);
    }
    if (layers.size() > MOST) {
      findings.add(
          Finding.cannot(Message.of("inlay.stencil-set-builder.too-many-colours", layers.size())));
      return StencilSet.of(Bounds.EMPTY, Vec.ZERO, List.of(), List.of(), findings);
    }
    Bounds around = painted.grown(margin());
    Bounds blank = new Bounds(0, 0, grid(around.width()), grid(around.height()));
    Vec origin = new Vec(around.minX(), around.minY());
    List<Stencil> stencils = stencils(blank, Affine.move(-origin.x(), -origin.y()));
    checkDarkness(stencils);
    return StencilSet.of(blank, origin, stencils, changes, findings);
  }

  /** The margin asked for, or the press band where that is wider. */
  private double margin() {
    if (rules.margin() < rules.pressBand()) {
      findings.add(
          Finding.look(Message.of("inlay.stencil-set-builder.margin-narrower-than-press-band")));
    }
    return grid(Math.max(rules.margin(), rules.pressBand()));
  }

  private List<Stencil> stencils(Bounds blank, Affine toBlank) {
    List<Region> seen = layers.stream().map(l -> l.artwork().map(toBlank)).toList();
    List<Stencil> made = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      Region grown = spread(seen.get(i), seen.subList(i + 1, seen.size()));
      Region wanted = rules.fixes().apply(i + 1, grown, blank, changes);
      made.add(Stencil.cut(i + 1, layers.get(i).colour(), seen.get(i), wanted, blank));
    }
    return made;
  }

  /** Grown into what is laid later only, and only where the growth hangs together with the rest. */
  private Region spread(Region own, List<Region> later) {
    if (rules.spread() <= 0 || own.isEmpty() || later.isEmpty()) {
      return own;
    }
    Region within = own.offset(rules.spread(), ARC_TOLERANCE).intersect(Region.union(later));
    Region grown = own.union(within);
    return Region.union(grown.parts().stream().filter(p -> p.intersect(own).area() > 0).toList());
  }

  private void checkDarkness(List<Stencil> stencils) {
    for (int later = 0; later < stencils.size(); later++) {
      checkOverBase(stencils.get(later), layers.get(later));
      for (int earlier = 0; earlier < later; earlier++) {
        if (layers.get(later).lightness() > layers.get(earlier).lightness()) {
          checkOverlap(stencils.get(earlier), stencils.get(later));
        }
      }
    }
  }

  private void checkOverBase(Stencil stencil, DyeLayer layer) {
    OptionalDouble base = rules.baseLightness();
    if (base.isPresent() && layer.lightness() > base.getAsDouble()) {
      findings.add(
          Finding.look(
              Message.of("inlay.stencil-set-builder.lighter-than-base-dye", stencil.colour()),
              stencil.openings().labelPoint()));
    }
  }

  private void checkOverlap(Stencil under, Stencil over) {
    Region both = under.openings().intersect(over.openings());
    if (!both.isEmpty()) {
      findings.add(
          Finding.look(
              Message.of(
                  "inlay.stencil-set-builder.laid-over-darker", over.colour(), under.colour()),
              both.labelPoint()));
    }
  }

  private static List<DyeLayer> asOne(List<DyeLayer> layers) {
    if (layers.size() < 2) {
      return layers;
    }
    Region all = Region.union(layers.stream().map(DyeLayer::artwork).toList());
    String names = layers.stream().map(DyeLayer::colour).collect(Collectors.joining(" + "));
    double lightest = layers.stream().mapToDouble(DyeLayer::lightness).max().orElse(0);
    return List.of(new DyeLayer(names, lightest, all));
  }

  /** To the 0.001 mm grid, so that the blank's corners lie on it. */
  private static double grid(double mm) {
    return Math.rint(mm * 1000) / 1000;
  }
}
