package slabwright.inlay.proof;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.artwork.batik.Icons;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** One graphic as a plan, and the drawings a shop could send back for it. */
record ProofCases(String name, Region openings, Bounds blank, Optional<Region> removable) {
  /** What the shop did. */
  enum Case {
    RIGHT,
    EXCHANGED,
    MISSING,
    ADDED,
    APART,
    LABELS
  }

  private static final double MARGIN = 50;
  private static final double LEAST_CHANGE = 0.005;

  /** An icon 1 m wide. */
  static ProofCases icon(String name) {
    try {
      Artwork art =
          (Artwork)
              SvgArtworkReader.read(
                  new ByteArrayInputStream(Icons.one(name)), name, ArtworkOptions.ofWidth(1000));
      Region all = Region.union(art.colours().stream().map(ColourRegion::region).toList());
      Region moved = all.map(Affine.move(MARGIN, MARGIN));
      Bounds b = art.painted();
      return new ProofCases(
          name,
          moved,
          new Bounds(0, 0, b.maxX() + 2 * MARGIN, b.maxY() + 2 * MARGIN),
          removable(moved));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Two panels that overlap by 12 mm. */
  List<Panel> panels() {
    double cut = blank.width() * 0.55;
    return List.of(
        new Panel("A", new Bounds(0, 0, cut + 12, blank.maxY())),
        new Panel("B", new Bounds(cut, 0, blank.maxX(), blank.maxY())));
  }

  ProofPlan plan() {
    return new ProofPlan(openings, blank, panels());
  }

  /** The largest part whose loss still leaves a graphic that is no mirror image of itself. */
  private static Optional<Region> removable(Region openings) {
    List<Region> parts = openings.parts();
    return parts.stream()
        .filter(p -> parts.size() > 1 && p.area() >= LEAST_CHANGE * openings.area())
        .filter(p -> p.area() < 0.5 * openings.area())
        .sorted(Comparator.comparingDouble(Region::area))
        .filter(p -> Symmetry.of(openings.minus(p)).worst() < 0.97)
        .findFirst();
  }

  /** A disc in the mask, 0.6 % of the openings, where there is most room. */
  Region addition() {
    Region mask = Region.rectangle(blank).minus(openings);
    Vec middle = mask.labelPoint();
    double r = Math.sqrt(0.006 * openings.area() / Math.PI);
    Region disc =
        Region.rectangle(new Bounds(-0.01, -0.01, 0.01, 0.01))
            .map(Affine.move(middle.x(), middle.y()))
            .offset(r, 0.05);
    return disc.minus(openings);
  }

  ShopDrawing drawing(Case which, Affine pose, long seed) {
    Shop shop = new Shop(pose, seed);
    Affine here = Affine.IDENTITY;
    return switch (which) {
      case RIGHT -> shop.edge(blank, here).shade(openings, here).drawing();
      case EXCHANGED -> shop.shade(Region.rectangle(blank).minus(openings), here).drawing();
      case MISSING ->
          shop.edge(blank, here).shade(openings.minus(removable().orElseThrow()), here).drawing();
      case ADDED -> shop.edge(blank, here).shade(openings.union(addition()), here).drawing();
      case LABELS -> shop.labels(blank).edge(blank, here).shade(openings, here).drawing();
      case APART -> {
        for (int i = 0; i < 2; i++) {
          Affine where = Affine.move(i * 160, i * 75);
          Bounds panel = panels().get(i).box();
          shop.edge(panel, where).shade(openings.intersect(Region.rectangle(panel)), where);
        }
        yield shop.drawing();
      }
    };
  }
}
