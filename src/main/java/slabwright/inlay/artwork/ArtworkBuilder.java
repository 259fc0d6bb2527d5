package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.shape.Arrangement;
import slabwright.shape.Bounds;
import slabwright.shape.Layer;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.CieLab;
import slabwright.units.Message;

/**
 * Brings painted shapes to their size on the floor and lets paint order decide what is seen. The
 * scale follows from the bounds of the outlines; where less than those is seen (an outline without
 * area, rings that cancel), it is laid out once more from what was seen.
 */
public final class ArtworkBuilder {
  private static final double TALLEST_MM = 1e6;
  private static final double WHOLE_PAGE = 1 - 1e-6;
  private static final double CLOSE = 4;
  private static final int MOST_ATTEMPTS = 4;

  private final List<PaintedShape> shapes;
  private final ArtworkPage page;
  private final ArtworkOptions options;
  private final WarningCollector notes;
  private final ColourMerging palette;
  private Map<String, String> names = Map.of();

  public ArtworkBuilder(
      List<PaintedShape> all, ArtworkPage page, ArtworkOptions options, WarningCollector notes) {
    this.page = page;
    this.options = options;
    this.notes = notes;
    this.palette = ColourMerging.of(all, options, notes);
    this.shapes =
        all.stream()
            .filter(s -> !options.ignored().contains(s.hex()))
            .filter(s -> !options.ignored().contains(palette.of(s.hex())))
            .toList();
  }

  /** What the file calls its inks, by {@code #rrggbb}. */
  public ArtworkBuilder named(Map<String, String> inks) {
    names = inks;
    return this;
  }

  public Artwork build(String name) {
    Rectangle2D reach = reach();
    double rough = options.widthMm() / reach.getWidth();
    List<Layer> layers = layers(placed(reach, rough));
    CrossingBudget.check(layers.stream().flatMap(l -> l.rings().stream()).toList());
    Optional<String> background = background(layers, rough);
    background.ifPresent(this::sayBackground);
    sayCut(background);
    Rectangle2D painted = unplaced(reach, rough, outlines(layers, background));
    for (int attempt = 1; ; attempt++) {
      double scale = scale(painted);
      AffineTransform toMm = placed(painted, scale);
      Map<String, Region> regions = partition(layers(toMm));
      Bounds seen = bounds(regions, background);
      boolean close =
          Math.abs(seen.width() - options.widthMm()) <= CLOSE * options.toleranceMm()
              && Math.abs(seen.minX()) + Math.abs(seen.minY()) <= CLOSE * options.toleranceMm();
      if (close || attempt == MOST_ATTEMPTS) {
        return artwork(name, toMm, regions, background);
      }
      painted = unplaced(painted, scale, seen);
    }
  }

  /** The bounds in page pixels of what has these bounds once {@code box} is placed. */
  private static Rectangle2D unplaced(Rectangle2D box, double scale, Bounds mm) {
    return new Rectangle2D.Double(
        box.getX() + mm.minX() / scale,
        box.getY() + mm.minY() / scale,
        mm.width() / scale,
        mm.height() / scale);
  }

  private double scale(Rectangle2D painted) {
    double scale = options.widthMm() / painted.getWidth();
    if (!Double.isFinite(scale) || !(painted.getHeight() > 0)) {
      throw RefusedArtworkException.nothingPainted();
    }
    if (painted.getHeight() * scale > TALLEST_MM) {
      throw new RefusedArtworkException(
          Reason.ABSURD_SIZE, Message.of("inlay.artwork-builder.too-high"));
    }
    return scale;
  }

  private Artwork artwork(
      String name, AffineTransform toMm, Map<String, Region> regions, Optional<String> background) {
    Map<String, Region> inOrder = new LinkedHashMap<>();
    for (PaintedShape s : shapes) {
      String hex = palette.of(s.hex());
      Optional.ofNullable(regions.get(hex)).ifPresent(r -> inOrder.putIfAbsent(hex, r));
    }
    Optional<ColourRegion> behind =
        background.flatMap(
            hex -> Optional.ofNullable(inOrder.remove(hex)).map(r -> colour(hex, r)));
    List<ColourRegion> colours = new ArrayList<>();
    inOrder.forEach((hex, region) -> colours.add(colour(hex, region)));
    return new Artwork(
        name,
        toMm.getScaleX() / page.declaredPerDrawn(),
        bounds(inOrder, Optional.empty()),
        colours,
        behind,
        notes.warnings(p -> onFloor(p, toMm)),
        ArtworkQuestionFinder.of(colours, notes.questions(p -> onFloor(p, toMm))),
        names,
        OptionalDouble.empty());
  }

  private static ColourRegion colour(String hex, Region region) {
    return new ColourRegion(hex, region, CieLab.ofHex(hex).l());
  }

  private static Vec onFloor(Vec p, AffineTransform toMm) {
    Point2D q = toMm.transform(new Point2D.Double(p.x(), p.y()), null);
    return new Vec(q.getX(), q.getY());
  }

  /** As far as anything painted can reach, in page pixels. */
  private Rectangle2D reach() {
    Rectangle2D all = null;
    for (PaintedShape s : shapes) {
      Rectangle2D box = s.outline().getBounds2D();
      all = all == null ? box : all.createUnion(box);
    }
    if (all != null && page.hasEdge()) {
      Rectangle2D sheet = new Rectangle2D.Double(0, 0, page.width(), page.height());
      boolean cut = shapes.stream().noneMatch(s -> s.clips().isEmpty());
      all = cut ? all.createIntersection(sheet) : all;
    }
    if (all == null || !(all.getWidth() > 0) || !(all.getHeight() > 0)) {
      throw RefusedArtworkException.nothingPainted();
    }
    return all;
  }

  private static AffineTransform placed(Rectangle2D box, double scale) {
    AffineTransform at = AffineTransform.getScaleInstance(scale, scale);
    at.translate(-box.getX(), -box.getY());
    return at;
  }

  private List<Layer> layers(AffineTransform toMm) {
    ShapeClipper clipping = new ShapeClipper(toMm, options.toleranceMm());
    OutlineBudget budget = new OutlineBudget();
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      layers.add(clipping.layer(i, shapes.get(i)));
      budget.addFlattened(layers.get(i).rings(), shapes.size());
    }
    return layers;
  }

  private Map<String, Region> partition(List<Layer> layers) {
    return Arrangement.of(layers)
        .partition(
            active ->
                active.isEmpty()
                    ? Optional.empty()
                    : Optional.of(palette.of(shapes.get(active.top()).hex())));
  }

  private static Bounds bounds(Map<String, Region> regions, Optional<String> except) {
    Bounds b = Bounds.EMPTY;
    for (Map.Entry<String, Region> e : regions.entrySet()) {
      if (!except.equals(Optional.of(e.getKey()))) {
        b = b.including(e.getValue().bounds());
      }
    }
    return b;
  }

  private Bounds outlines(List<Layer> layers, Optional<String> except) {
    Bounds b = Bounds.EMPTY;
    for (int i = 0; i < layers.size(); i++) {
      if (!except.equals(Optional.of(palette.of(shapes.get(i).hex())))) {
        for (Ring ring : layers.get(i).rings()) {
          b = b.including(ring.bounds());
        }
      }
    }
    return b;
  }

  /** The colour of a first shape that fills the page, when another colour is painted over it. */
  private Optional<String> background(List<Layer> layers, double scale) {
    String first = palette.of(shapes.get(0).hex());
    boolean alone = shapes.stream().allMatch(s -> palette.of(s.hex()).equals(first));
    if (!page.hasEdge() || alone) {
      return Optional.empty();
    }
    double whole = page.width() * page.height() * scale * scale;
    Layer lowest = layers.get(0);
    double filled = Region.of(lowest.rings(), lowest.rule()).area();
    return filled >= whole * WHOLE_PAGE ? Optional.of(first) : Optional.empty();
  }

  /** A background may well bleed over the page. */
  private void sayCut(Optional<String> background) {
    List<PaintedShape> wanted =
        shapes.stream().filter(s -> !background.equals(Optional.of(palette.of(s.hex())))).toList();
    PageEdgeCheck.note(wanted, page, palette::of, notes);
  }

  private void sayBackground(String hex) {
    notes.add(Kind.BACKGROUND, Message.of("inlay.artwork-builder.background", hex));
  }
}
