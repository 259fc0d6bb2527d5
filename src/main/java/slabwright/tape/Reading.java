package slabwright.tape;

import java.util.Optional;
import slabwright.units.Length;
import slabwright.units.Message;

/**
 * One thing measured in the room. Corners are counted from 0 in walking order; wall {@code k} runs
 * from corner {@code k} to the next, the last one back to the first. Lengths keep what was typed.
 */
public sealed interface Reading {
  /** What was read: {@code wall A-B}, {@code turn at C}. */
  Message name(int corners);

  /** A reading made with the tape. */
  sealed interface Taped extends Reading {
    Length length();

    /** One standard deviation, where it is not the room's. */
    Optional<Length> error();
  }

  /** The length of one wall from corner to corner. */
  sealed interface Along extends Taped {
    int wall();

    @Override
    default Message name(int corners) {
      return Message.of("tape.reading.wall", CornerName.wall(wall(), corners));
    }
  }

  /** A straight wall. */
  record Wall(int wall, Length length, Optional<Length> error) implements Along {}

  /**
   * A curved wall.
   *
   * @param length its chord
   * @param rise the height of the arc over the chord
   * @param outward whether the wall bulges away from the room
   */
  record Curve(int wall, Length length, Length rise, boolean outward, Optional<Length> error)
      implements Along {}

  /**
   * The turn from one wall to the next; with a curved wall, from or to its chord.
   *
   * @param degrees from straight ahead, positive to the left
   * @param error one standard deviation in degrees, where it is not the room's
   */
  record Turn(int corner, double degrees, Trust trust, Optional<Double> error) implements Reading {
    @Override
    public Message name(int corners) {
      return Message.of("tape.reading.turn", CornerName.of(corner));
    }
  }

  /** Straight across from one corner to another; between neighbours, a wall measured again. */
  record Diagonal(int from, int to, Length length, Optional<Length> error) implements Taped {
    @Override
    public Message name(int corners) {
      return Message.of("tape.reading.diagonal", CornerName.of(from), CornerName.of(to));
    }
  }

  /** From a corner square on to the line of a wall. */
  record CornerToWall(int corner, int wall, Length length, Optional<Length> error)
      implements Taped {
    @Override
    public Message name(int corners) {
      return Message.of(
          "tape.reading.corner-to-wall", CornerName.of(corner), CornerName.wall(wall, corners));
    }
  }

  /** From a corner to the spot on a wall that lies {@code along} from the wall's first corner. */
  record CornerToSpot(int corner, int wall, Length along, Length length, Optional<Length> error)
      implements Taped {
    @Override
    public Message name(int corners) {
      return Message.of(
          "tape.reading.corner-to-spot",
          CornerName.of(corner),
          CornerName.wall(wall, corners),
          along.toString());
    }
  }

  /** From the middle of a wall square on to the line of another. */
  record WallToWall(int wall, int opposite, Length length, Optional<Length> error)
      implements Taped {
    @Override
    public Message name(int corners) {
      String other = CornerName.wall(opposite, corners);
      return Message.of("tape.reading.wall-to-wall", CornerName.wall(wall, corners), other);
    }
  }

  /** How far a turn can be relied on. */
  enum Trust {
    /** Judged by eye or measured: a reading with its error. */
    READ,
    /** Declared exact, for example checked with a square. */
    TRUE,
    /** A help to sketch the first shape; not a reading. */
    ABOUT
  }
}
