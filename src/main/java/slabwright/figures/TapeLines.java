package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.Reading;
import slabwright.tape.ReadingReport;

/** Where the readings of a taped room run, in the site's frame; straight from end to end. */
final class TapeLines {
  private final AdjustedRoom room;
  private final List<Vec> corners;

  /**
   * The lines of a room.
   *
   * @param placing from the room's frame to the site's
   */
  TapeLines(AdjustedRoom room, Affine placing) {
    this.room = room;
    corners = room.corners().stream().map(c -> placing.apply(c.at())).toList();
  }

  List<Vec> corners() {
    return corners;
  }

  /** The line of a reading; a turn has none. */
  Optional<Line> of(ReadingReport report) {
    Reading reading = room.room().readings().get(report.index());
    if (reading instanceof Reading.Along a) {
      return Optional.of(Line.of(corner(a.wall()), corner(a.wall() + 1)));
    } else if (reading instanceof Reading.Diagonal d) {
      return Optional.of(Line.of(corner(d.from()), corner(d.to())));
    } else if (reading instanceof Reading.CornerToWall c) {
      return Optional.of(Line.of(corner(c.corner()), foot(corner(c.corner()), c.wall())));
    } else if (reading instanceof Reading.CornerToSpot c) {
      Vec way = corner(c.wall() + 1).minus(corner(c.wall())).unit();
      Vec spot = corner(c.wall()).plus(way.times(c.along().mm()));
      return Optional.of(Line.of(corner(c.corner()), spot));
    } else if (reading instanceof Reading.WallToWall w) {
      Vec middle = corner(w.wall()).towards(corner(w.wall() + 1), 0.5);
      return Optional.of(Line.of(middle, foot(middle, w.opposite())));
    }
    return Optional.empty();
  }

  /** Whether a reading is a wall's own; those need no line beside the wall. */
  boolean isWall(ReadingReport report) {
    return room.room().readings().get(report.index()) instanceof Reading.Along;
  }

  /** The readings that the advice is about. */
  List<Integer> doubted() {
    List<Integer> all = new ArrayList<>();
    room.advice().stream()
        .filter(
            a ->
                switch (a.kind()) {
                  case LEFT_OUT, MEASURE_AGAIN, CANNOT_TELL -> true;
                  case WIDE_GAP, MAYBE_SLIP, SCATTER, NOT_CHECKED, WALLS_CROSS -> false;
                })
        .forEach(a -> all.addAll(a.readings()));
    return all;
  }

  private Vec corner(int i) {
    return corners.get(i % corners.size());
  }

  private Vec foot(Vec from, int wall) {
    Vec a = corner(wall);
    Vec way = corner(wall + 1).minus(a).unit();
    return a.plus(way.times(from.minus(a).dot(way)));
  }
}
