package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** Finds room on a panel's film for what the pen draws, clear of openings and other marks. */
final class PenPlaces {
  private static final double[] HEIGHTS = {12, 8, 5, 3};
  private static final int LETTERS = 16;
  private static final double CLEAR = 4;
  private static final double STEP = 15;
  private static final int MOST_TRIED = 600;
  private static final double LARGEST_RING = 8;
  private static final double LEAST_RING = 1.5;
  private static final double RING_SHARE = 0.6;
  private static final int RING_SIDES = 20;

  private final Region open;
  private final Bounds panel;
  private final List<Vec> taken = new ArrayList<>();

  PenPlaces(Region open, double width, double height, List<Line> marks) {
    this.open = open;
    this.panel = new Bounds(0, 0, width, height);
    marks.forEach(m -> taken.addAll(m.points()));
  }

  /** A label as large as there is room for, as near to the top left as there is room. */
  Optional<PenLabel> label(List<Message> lines) {
    for (double height : HEIGHTS) {
      Optional<Bounds> box = free(PenLabel.room(lines.size(), LETTERS, height));
      if (box.isPresent()) {
        return box.map(b -> new PenLabel(b, lines));
      }
    }
    return Optional.empty();
  }

  private Optional<Bounds> free(Bounds room) {
    int across = (int) Math.floor((panel.maxX() - room.width() - 2 * CLEAR) / STEP);
    int down = (int) Math.floor((panel.maxY() - room.height() - 2 * CLEAR) / STEP);
    if (across < 0 || down < 0) {
      return Optional.empty();
    }
    int rows = Math.min(down, MOST_TRIED / (across + 1));
    for (int i = 0; i <= rows; i++) {
      for (int j = 0; j <= across; j++) {
        double x = CLEAR + j * STEP;
        double y = CLEAR + i * STEP;
        Bounds box = new Bounds(x, y, x + room.width(), y + room.height());
        if (isFree(box.grown(CLEAR))) {
          return Optional.of(box);
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(Bounds box) {
    return taken.stream().noneMatch(box::contains) && !open.meets(Region.rectangle(box));
  }

  /** A small ring on a piece that stays; none where the piece is too small for a pen. */
  static Optional<Line> ring(Region piece) {
    Vec middle = piece.labelPoint();
    double room = piece.nearestOnBoundary(middle).distanceTo(middle);
    double r = Math.min(LARGEST_RING, RING_SHARE * room);
    return r < LEAST_RING ? Optional.empty() : Optional.of(circle(middle, r));
  }

  static Line circle(Vec middle, double r) {
    List<Vec> round = new ArrayList<>();
    for (int i = 0; i <= RING_SIDES; i++) {
      double a = 2 * Math.PI * i / RING_SIDES;
      round.add(middle.plus(new Vec(Math.cos(a), Math.sin(a)).times(r)));
    }
    return new Line(round);
  }
}
