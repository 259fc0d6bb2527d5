package slabwright.tape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slabwright.tape.Reading.Trust;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.Observation;
import slabwright.tape.leastsquares.OffsetObservation;
import slabwright.tape.leastsquares.TurnObservation;
import slabwright.tape.leastsquares.WallSpotObservation;

/** The readings of a room as rows of the adjustment, each with its place among the readings. */
final class RoomObservations {
  /** "True" is held to 0.001°: 0.2 mm in 10 m. */
  private static final double TRUE_DEGREES = TapeRoom.SMALLEST_TURN_ERROR;

  private final TapeRoom room;
  private final List<Observation> rows = new ArrayList<>();
  private final List<Integer> readings = new ArrayList<>();
  private final double[] about;

  RoomObservations(TapeRoom room) {
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
    return new TurnObservation(
        before, t.corner(), next(t.corner()), Math.toRadians(t.degrees()), Math.toRadians(degrees));
  }

  private Observation tape(Reading.Taped taped, double mm, double sd) {
    if (taped instanceof Reading.Along a) {
      return new DistanceObservation(a.wall(), next(a.wall()), mm, sd);
    }
    if (taped instanceof Reading.Diagonal d) {
      return new DistanceObservation(d.from(), d.to(), mm, sd);
    }
    if (taped instanceof Reading.CornerToWall c) {
      return new OffsetObservation(c.corner(), c.corner(), c.wall(), next(c.wall()), mm, sd);
    }
    if (taped instanceof Reading.CornerToSpot c) {
      return new WallSpotObservation(c.corner(), c.wall(), next(c.wall()), c.along().mm(), mm, sd);
    }
    Reading.WallToWall w = (Reading.WallToWall) taped;
    return new OffsetObservation(
        w.wall(), next(w.wall()), w.opposite(), next(w.opposite()), mm, sd);
  }

  private int next(int corner) {
    return (corner + 1) % room.corners();
  }

  /** A diagonal that has not been taped yet, as its row would be at these corners. */
  DistanceObservation diagonal(int from, int to, double[] xy) {
    double mm = new DistanceObservation(from, to, 0, 1).computed(xy);
    return new DistanceObservation(from, to, mm, room.tapeError().of(mm));
  }
}
