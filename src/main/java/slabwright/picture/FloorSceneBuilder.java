package slabwright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.floor.Zone;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.ColourChoice;
import slabwright.site.Exposure;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Setting;
import slabwright.site.Spot;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;

/** Works out a scene from results; one use. */
final class FloorSceneBuilder {
  /** A crack thinner than this shows so, as its dark edges do, mm. */
  private static final double THINNEST_LINE = 2;

  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final List<PlacedInlay> inlays;
  private final ShopBook book;
  private final Exposure exposure;
  private final List<String> uncoloured = new ArrayList<>();
  private LinearColour baseTransmission = new LinearColour(1, 1, 1);

  FloorSceneBuilder(FloorTakeoff takeoff, List<PlacedInlay> inlays, ShopBook book) {
    this.takeoff = takeoff;
    this.area = takeoff.area();
    this.inlays = inlays;
    this.book = book;
    this.exposure = area.finish().exposure().orElse(Exposure.CREAM);
  }

  Region gross() {
    return takeoff.gross();
  }

  List<Ring> floor() {
    return takeoff.net().rings();
  }

  GroundLook slab() {
    return GroundLook.of(GroundLook.Kind.SLAB, exposure);
  }

  boolean isIndoors() {
    return area.setting() == Setting.INDOOR;
  }

  /** The topmost first: lines, then zones, which share no place. */
  List<FloorScene.GroundPatch> patches() {
    List<FloorScene.GroundPatch> all = new ArrayList<>();
    area.marks().forEach(m -> filledLine(m).ifPresent(all::add));
    for (Zone z : takeoff.zones()) {
      z.mark()
          .map(Mark::kind)
          .flatMap(FloorSceneBuilder::ground)
          .ifPresent(k -> all.add(patch(z.region(), k)));
    }
    return all;
  }

  private FloorScene.GroundPatch patch(Region region, GroundLook.Kind kind) {
    return new FloorScene.GroundPatch(region.rings(), GroundLook.of(kind, exposure));
  }

  private static Optional<GroundLook.Kind> ground(MarkKind kind) {
    return switch (kind.type()) {
      case TRENCH -> Optional.of(trench((MarkKind.Trench) kind));
      case PATCH -> Optional.of(GroundLook.Kind.PATCH);
      case RESIDUE -> Optional.of(GroundLook.Kind.RESIDUE);
      case SPALL, JOINT, CRACK -> Optional.of(GroundLook.Kind.FILLED);
      case DRAIN_OR_BOX -> Optional.of(GroundLook.Kind.METAL);
      case ISLAND,
          BOOTH,
          COLUMN,
          TOP_OR_STEP,
          LEVEL_CHANGE,
          MASKED_TRIM,
          POWER_POINT,
          DETECTOR,
          IGNITION_SOURCE,
          AIR_OUTLET ->
          Optional.empty();
    };
  }

  private static GroundLook.Kind trench(MarkKind.Trench t) {
    return switch (t.lie()) {
      case PROUD -> GroundLook.Kind.TRENCH_PROUD;
      case LOW -> GroundLook.Kind.TRENCH_LOW;
      case FLUSH -> GroundLook.Kind.TRENCH_FLUSH;
    };
  }

  private Optional<FloorScene.GroundPatch> filledLine(Mark m) {
    double width =
        m.kind() instanceof MarkKind.Joint j
            ? j.width().mm()
            : m.kind() instanceof MarkKind.Crack c ? c.width().mm() : 0;
    if (width <= 0 || !(m.form() instanceof Form.Trace trace)) {
      return Optional.empty();
    }
    Line line = new Line(trace.path().stream().map(Spot::vec).toList());
    double half = Math.max(THINNEST_LINE, width) / 2;
    return Optional.of(patch(Region.strip(line, half), GroundLook.Kind.FILLED));
  }

  /** Base dyes over all of the floor, then each graphic's colours in laying order. */
  List<DyeFilm> films() {
    List<DyeFilm> all = new ArrayList<>();
    List<Ring> floor = floor();
    for (Finish.Coat coat : area.finish().coats()) {
      if (coat.target() == Finish.Target.WHOLE_FLOOR) {
        product(coat.product())
            .filter(p -> p.is(ProductKind.BASE_DYE))
            .flatMap(p -> baseDye(p, coat.coats()))
            .ifPresent(t -> all.add(new DyeFilm(floor, t)));
      }
    }
    for (DyeFilm f : all) {
      baseTransmission = baseTransmission.times(f.transmission());
    }
    inlays.forEach(i -> all.addAll(graphic(i)));
    return all;
  }

  private Optional<LinearColour> baseDye(Product p, int coats) {
    Optional<String> colour = p.colour().maybe();
    if (colour.isEmpty()) {
      uncoloured.add(p.label());
    }
    return colour.map(
        hex ->
            DyeFilm.transmission(
                LinearColour.ofHex(hex), GroundLook.SLAB, coats, bookCoats(p, coats)));
  }

  private static int bookCoats(Product p, int otherwise) {
    return p.spread().coats().maybe().orElse(otherwise);
  }

  private List<DyeFilm> graphic(PlacedInlay placed) {
    Optional<Affine> toSite = placed.plan().toSite();
    List<DyeFilm> all = new ArrayList<>();
    if (toSite.isPresent()) {
      for (Stencil s : placed.plan().stencils().stencils()) {
        List<Ring> rings =
            s.artwork().rings().stream().map(ring -> ring.map(toSite.get())).toList();
        all.add(new DyeFilm(rings, transmission(placed, s.colour())));
      }
    }
    return all;
  }

  /** The graphic's colour in the book's coats, over the floor as dyed before and sealed after. */
  private LinearColour transmission(PlacedInlay placed, String colour) {
    LinearColour ground = GroundLook.SLAB.times(baseTransmission).times(sheen().deepening());
    Optional<Finish.Coat> coat = inlayCoat(placed, colour);
    double coats = coat.map(Finish.Coat::coats).orElse(1);
    double bookCoats =
        coat.flatMap(c -> product(c.product()).map(p -> bookCoats(p, c.coats())))
            .map(Integer::doubleValue)
            .orElse(coats);
    return DyeFilm.transmission(LinearColour.ofHex(colour), ground, coats, bookCoats);
  }

  private Optional<Finish.Coat> inlayCoat(PlacedInlay placed, String colour) {
    String own =
        placed.inlay().spec().colours().stream()
            .filter(c -> c.colour().equals(colour))
            .map(ColourChoice::product)
            .findFirst()
            .orElse("");
    return area.finish().coats().stream()
        .filter(c -> c.target() == Finish.Target.INLAY)
        .filter(c -> own.isEmpty() || c.product().equals(own))
        .findFirst();
  }

  private Optional<Product> product(String id) {
    return book.products().stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** The last of what seals the floor rules; the figures are chosen by eye. */
  FloorScene.Sheen sheen() {
    FloorScene.Sheen last = new FloorScene.Sheen(0.05, 1);
    for (Finish.Coat coat : area.finish().coats()) {
      Optional<ProductKind> kind = product(coat.product()).flatMap(p -> p.kind().maybe());
      if (coat.target() == Finish.Target.WHOLE_FLOOR && kind.isPresent()) {
        last = sealed(kind.get(), coat.coats(), last);
      }
    }
    return last;
  }

  private static FloorScene.Sheen sealed(ProductKind kind, int coats, FloorScene.Sheen before) {
    return switch (kind) {
      case SEALER -> new FloorScene.Sheen(0.3, 0.96);
      case OUTDOOR_SEALER -> new FloorScene.Sheen(0.15, 0.96);
      case TOPCOAT -> new FloorScene.Sheen(Math.min(1, 0.6 + 0.2 * coats), 0.92);
      case BASE_DYE, INLAY_DYE, GRIT_ADDITIVE, FILLER, LEVELLER, CLEANER -> before;
    };
  }

  List<StandingBlock> blocks() {
    List<StandingBlock> all = new ArrayList<>();
    for (Obstacle o : takeoff.standing()) {
      all.add(
          new StandingBlock(
              o.region().rings(), height(o.mark().kind()), BlockColours.of(o.mark().kind())));
    }
    return all;
  }

  /** How high it is shown; heights of furniture are common ones, for the plan has none. */
  private double height(MarkKind kind) {
    if (kind instanceof MarkKind.TopOrStep top) {
      return top.steps() > 1 ? 170.0 * top.steps() : 900;
    }
    return switch (kind.type()) {
      case COLUMN -> WallSurroundings.height(area);
      case BOOTH -> 1250;
      default -> 1050;
    };
  }

  List<WallPiece> walls() {
    return WallSurroundings.pieces(area);
  }

  List<String> uncoloured() {
    return uncoloured;
  }

  /** The middle of a line of any number of points. */
  static Vec middle(Line line) {
    return line.points().get(0).towards(line.points().get(line.points().size() - 1), 0.5);
  }
}
