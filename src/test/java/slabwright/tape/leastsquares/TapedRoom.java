package slabwright.tape.leastsquares;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import slabwright.tape.Reading;
import slabwright.tape.TapeRoom;
import slabwright.units.Length;

/** A {@link RandomRoom} as it would be typed in; the same seed, the same room. */
public final class TapedRoom {
  private TapedRoom() {}

  /** Walls, turns and diagonals with honest errors. */
  public static TapeRoom of(long seed) {
    RandomRoom random = new RandomRoom(seed);
    List<Reading> readings = new ArrayList<>();
    for (Observation o : random.readings()) {
      readings.add(reading(o, random.size()));
    }
    return TapeRoom.of(random.size()).withReadings(readings);
  }

  /** The walk alone: each wall and each turn once. */
  public static TapeRoom plainWalk(long seed) {
    TapeRoom room = of(seed);
    return room.withReadings(
        room.readings().stream().filter(r -> !(r instanceof Reading.Diagonal)).toList());
  }

  private static Reading reading(Observation o, int n) {
    if (o instanceof TurnObservation t) {
      return new Reading.Turn(
          t.at(), Math.toDegrees(t.read()), Reading.Trust.READ, Optional.empty());
    }
    DistanceObservation s = (DistanceObservation) o;
    Length mm = Length.mm(Math.rint(s.read()));
    return s.to() == (s.from() + 1) % n
        ? new Reading.Wall(s.from(), mm, Optional.empty())
        : new Reading.Diagonal(s.from(), s.to(), mm, Optional.empty());
  }

  /** One reading spoiled: a length by 60 mm to 3 m, a turn by 10° to 40° or to the other side. */
  public static TapeRoom spoiled(TapeRoom room, int index, Random random) {
    Reading r = room.readings().get(index);
    if (r instanceof Reading.Turn t) {
      double by = (10 + 30 * random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
      double degrees = random.nextInt(4) == 0 ? -t.degrees() : t.degrees() + by;
      return room.replacing(index, new Reading.Turn(t.corner(), degrees, t.trust(), t.error()));
    }
    Reading.Taped taped = (Reading.Taped) r;
    double by = 60 * Math.exp(4 * random.nextDouble());
    boolean shorter = random.nextBoolean() && taped.length().mm() - by > 300;
    Length other = Length.mm(Math.rint(taped.length().mm() + (shorter ? -by : by)));
    return room.replacing(index, withLength(taped, other));
  }

  /** The same reading with another length. */
  public static Reading withLength(Reading.Taped taped, Length other) {
    return taped instanceof Reading.Wall w
        ? new Reading.Wall(w.wall(), other, w.error())
        : new Reading.Diagonal(
            ((Reading.Diagonal) taped).from(),
            ((Reading.Diagonal) taped).to(),
            other,
            taped.error());
  }
}
