package slabwright.tape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slabwright.tape.Reading.Trust;

/** The readings of a room as rows of the adjustment, each with its place among the readings. */
final class Observations {
  /** "True" is held to 0.001°: 0.2 mm in 10 m. */
  private static final double TRUE_DEGREES = TurnWords.SMALLEST_ERROR;

  private final TapeRoom room;
  private final List<Observation> rows = new ArrayList<>();
  private final List<Integer> readings = new ArrayList<>();
  private final double[] about;

  Observations(TapeRoom room) {
    this.room = room;
    about = new double[room.corners()];
    Arrays.fill(about, Double.NaN);
    for (int i = 0; i < room.readings().size(); i++) {
      add(i, room.readings().get(i));
    }
  }

  private void add(int index, Reading reading) {
    if (reading instanceof Reading.Turn t && t.trust() == Trust.ABOUT) {
      about[t.corner()] = Math.toRadians(t.degrees());
      return;
    }
    rows.add(row(reading));
    readings.add(index);
  }

  List<Observation> rows() {
    return List.copyOf(rows);
  }

  /** The place among the room's readings of the reading behind a row. */
  int reading(int row) {
    return readings.get(row);
  }

  /** Rough turns in radians, NaN where none was said. */
  double[] about() {
    return about.clone();
  }

  /** The row of a reading; rough turns have none but are given one all the same. */
  private Observation row(Reading reading) {
    if (reading instanceof Reading.Turn t) {
      return turn(t);
    }
    Reading.Taped taped = (Reading.Taped) reading;
    double mm = taped.length().mm();
    return tape(taped, mm, taped.error().map(e -> e.mm()).orElse(room.tapeError().of(mm)));
  }

  private Observation turn(Reading.Turn t) {
    double usual = t.trust() == Trust.TRUE ? TRUE_DEGREES : room.turnError();
    double degrees = Math.max(TRUE_DEGREES, t.error().orElse(usual));
    int before = (t.corner() + room.corners() - 1) % room.corners();
    return new Bend(
        before, t.corner(), next(t.corner()), Math.toRadians(t.degrees()), Math.toRadians(degrees));
  }

  private Observation tape(Reading.Taped taped, double mm, double sd) {
    if (taped instanceof Reading.Along a) {
      return new Spread(a.wall(), next(a.wall()), mm, sd);
    }
    if (taped instanceof Reading.Diagonal d) {
      return new Spread(d.from(), d.to(), mm, sd);
    }
    if (taped instanceof Reading.CornerToWall c) {
      return new Square(c.corner(), c.corner(), c.wall(), next(c.wall()), mm, sd);
    }
    if (taped instanceof Reading.CornerToSpot c) {
      return new ToSpot(c.corner(), c.wall(), next(c.wall()), c.along().mm(), mm, sd);
    }
    Reading.WallToWall w = (Reading.WallToWall) taped;
    return new Square(w.wall(), next(w.wall()), w.opposite(), next(w.opposite()), mm, sd);
  }

  private int next(int corner) {
    return (corner + 1) % room.corners();
  }

  /** A diagonal that has not been taped yet, as its row would be at these corners. */
  Spread diagonal(int from, int to, double[] xy) {
    double mm = new Spread(from, to, 0, 1).computed(xy);
    return new Spread(from, to, mm, room.tapeError().of(mm));
  }
}
