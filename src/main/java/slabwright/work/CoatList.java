package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.site.Finish;
import slabwright.site.Form;
import slabwright.site.MarkType;
import slabwright.site.Spot;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.Laying;
import slabwright.work.book.LayingTool;
import slabwright.work.book.Product;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatDivider;
import slabwright.work.coat.CoatParameters;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.DivisionParameters;
import slabwright.work.coat.LaneGrid;

/**
 * The coats of one floor area's finish system.
 *
 * @param coats in order
 * @param unknown ids of products that the finish names and the shop book lacks
 */
record CoatList(List<CoatPlan> coats, List<String> unknown) {
  CoatList {
    coats = List.copyOf(coats);
    unknown = List.copyOf(unknown);
  }

  static CoatList of(AreaTakeoff floor, ShopBook book) {
    List<CoatPlan> coats = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    LaneGridCache grids = new LaneGridCache(floor);
    for (Finish.Coat coat : floor.area().finish().coats()) {
      Optional<Product> product =
          book.products().stream().filter(p -> p.id().equals(coat.product())).findFirst();
      if (product.isPresent()) {
        int place = coats.size() + unknown.size() + 1;
        CoatParameters job = job(floor, coat, place, product.get(), book, grids);
        coats.add(
            division(floor, product.get(), coat, book)
                .map(site -> CoatDivider.plan(job, site))
                .orElseGet(() -> CoatPlan.of(job)));
      } else {
        unknown.add(coat.product());
      }
    }
    return new CoatList(coats, unknown);
  }

  /** How a coat of the whole floor may be divided; empty for others and without a way out. */
  private static Optional<DivisionParameters> division(
      AreaTakeoff floor, Product p, Finish.Coat coat, ShopBook book) {
    Optional<Duration> day = StepHours.inOneGo(book).maybe();
    if (coat.target() != Finish.Target.WHOLE_FLOOR || day.isEmpty() || floor.wayOut().isEmpty()) {
      return Optional.empty();
    }
    List<Line> joints =
        floor.area().marks().stream()
            .filter(m -> m.kind().type() == MarkType.JOINT && m.form() instanceof Form.Trace)
            .map(m -> line(m.form().spots()))
            .filter(l -> l.points().size() > 1)
            .toList();
    List<Line> given =
        floor.area().details().coatDivisions().stream()
            .filter(d -> d.product().isEmpty() || d.product().equals(p.id()))
            .map(d -> line(d.line()))
            .toList();
    return Optional.of(
        new DivisionParameters(floor.floor(), floor.wayOut().get(), joints, given, day.get()));
  }

  private static Line line(List<Spot> path) {
    return new Line(path.stream().map(Spot::vec).toList());
  }

  private static CoatParameters job(
      AreaTakeoff floor,
      Finish.Coat coat,
      int place,
      Product p,
      ShopBook book,
      LaneGridCache grids) {
    boolean whole = coat.target() == Finish.Target.WHOLE_FLOOR;
    double mm2 =
        whole ? floor.net() : floor.inlays().stream().mapToDouble(i -> openings(i, p)).sum();
    return new CoatParameters(
        floor.area().name(),
        place,
        p,
        coat.target(),
        coat.coats(),
        mm2,
        whole && !p.laying().isSprayed() ? floor.cutIn() : 0,
        whole ? grids.of(p) : Figure.known(Optional.empty()),
        whole ? p.laying().rate() : book.inlay().mist(),
        whole ? atMostCrew(p, book) : Figure.known(1),
        floor.area().slab().airC(),
        floor.area().slab().surfaceC(),
        book.crew().people());
  }

  private static Figure<Integer> atMostCrew(Product p, ShopBook book) {
    return p.laying().people().with(book.crew().people(), Math::min);
  }

  /** What of an inlay a product is misted on. */
  static double openings(InlayTakeoff inlay, Product p) {
    return inlay.dyes().stream()
        .filter(d -> d.product().equals(p.id()))
        .mapToDouble(InlayTakeoff.StencilDye::openings)
        .sum();
  }

  /** Lane grids of one floor while its coats are listed, each width made once. */
  private static final class LaneGridCache {
    /** The narrowest lane that is rolled on a floor, mm. */
    private static final double NARROWEST = 25;

    private final AreaTakeoff floor;
    private final Map<Double, LaneGrid> byPitch = new HashMap<>();

    LaneGridCache(AreaTakeoff floor) {
      this.floor = floor;
    }

    /** Known and empty for what is not rolled, and for a floor without a way out. */
    Figure<Optional<LaneGrid>> of(Product p) {
      Laying laying = p.laying();
      boolean rolled = laying.tool().maybe().filter(t -> t == LayingTool.ROLLER).isPresent();
      if (!rolled || floor.wayOut().isEmpty()) {
        return Figure.known(Optional.empty());
      }
      return laying
          .rollerMm()
          .with(laying.lap(), (width, lap) -> width * (1 - lap))
          .flatMap(this::grid);
    }

    private Figure<Optional<LaneGrid>> grid(double pitch) {
      return pitch >= NARROWEST
          ? Figure.known(Optional.of(byPitch.computeIfAbsent(pitch, this::made)))
          : Figure.refused(Message.of("work.lane-grid-cache.a-roller-this-narrow-lays"));
    }

    private LaneGrid made(double pitch) {
      return new LaneGrid(floor.floor(), floor.wayOut().orElseThrow(), pitch);
    }
  }
}
