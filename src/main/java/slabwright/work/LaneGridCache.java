package slabwright.work;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.Laying;
import slabwright.work.book.LayingTool;
import slabwright.work.book.Product;
import slabwright.work.coat.LaneGrid;

/** Lane grids of one floor while its coats are listed, each width made once. */
final class LaneGridCache {
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
