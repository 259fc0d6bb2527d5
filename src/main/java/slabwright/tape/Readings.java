package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.units.Length;

/** Readings changed by themselves, and set beside corners that were drawn. */
public final class Readings {
  /** How many times the usual error a doubtful reading is taken to have; common practice. */
  private static final double DOUBT = 10;

  /** A reading that corners meet within this is not contradicted, mm; 0.05° for a turn. */
  private static final double MET = 1;

  private static final double MET_TURN = Math.toRadians(0.05);

  private Readings() {}

  /** A taped reading with another length. */
  public static Reading withLength(Reading.Taped old, Length length) {
    if (old instanceof Reading.Wall w) {
      return new Reading.Wall(w.wall(), length, w.error());
    }
    if (old instanceof Reading.Curve c) {
      return new Reading.Curve(c.wall(), length, c.rise(), c.outward(), c.error());
    }
    if (old instanceof Reading.Diagonal d) {
      return new Reading.Diagonal(d.from(), d.to(), length, d.error());
    }
    if (old instanceof Reading.CornerToWall c) {
      return new Reading.CornerToWall(c.corner(), c.wall(), length, c.error());
    }
    if (old instanceof Reading.CornerToSpot c) {
      return new Reading.CornerToSpot(c.corner(), c.wall(), c.along(), length, c.error());
    }
    Reading.WallToWall w = (Reading.WallToWall) old;
    return new Reading.WallToWall(w.wall(), w.opposite(), length, w.error());
  }

  /** Whether a reading counts less than the room's others. */
  public static boolean isDoubtful(TapeRoom room, Reading r) {
    if (r instanceof Reading.Turn t) {
      return t.error().filter(e -> e > room.turnError()).isPresent();
    }
    Reading.Taped t = (Reading.Taped) r;
    return t.error().filter(e -> e.mm() > room.tapeError().of(t.length().mm())).isPresent();
  }

  /** The reading marked doubtful, ten times the room's error, or trusted like the others again. */
  public static Reading doubted(TapeRoom room, Reading old, boolean doubtful) {
    if (old instanceof Reading.Turn t) {
      Optional<Double> error = doubtful ? Optional.of(DOUBT * room.turnError()) : Optional.empty();
      return new Reading.Turn(t.corner(), t.degrees(), t.trust(), error);
    }
    Reading.Taped taped = (Reading.Taped) old;
    double mm = DOUBT * room.tapeError().of(taped.length().mm());
    return withError(taped, doubtful ? Optional.of(Length.mm(Math.ceil(mm))) : Optional.empty());
  }

  private static Reading withError(Reading.Taped old, Optional<Length> error) {
    if (old instanceof Reading.Wall w) {
      return new Reading.Wall(w.wall(), w.length(), error);
    }
    if (old instanceof Reading.Curve c) {
      return new Reading.Curve(c.wall(), c.length(), c.rise(), c.outward(), error);
    }
    if (old instanceof Reading.Diagonal d) {
      return new Reading.Diagonal(d.from(), d.to(), d.length(), error);
    }
    if (old instanceof Reading.CornerToWall c) {
      return new Reading.CornerToWall(c.corner(), c.wall(), c.length(), error);
    }
    if (old instanceof Reading.CornerToSpot c) {
      return new Reading.CornerToSpot(c.corner(), c.wall(), c.along(), c.length(), error);
    }
    Reading.WallToWall w = (Reading.WallToWall) old;
    return new Reading.WallToWall(w.wall(), w.opposite(), w.length(), error);
  }

  /** The place of the first reading of a wall's length; empty when none was read. */
  public static Optional<Integer> ofWall(TapeRoom room, int wall) {
    for (int i = 0; i < room.readings().size(); i++) {
      if (room.readings().get(i) instanceof Reading.Along a && a.wall() == wall) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /**
   * A reading that the corners as drawn do not meet, while the adjusted room did.
   *
   * @param index its place among the room's readings
   * @param drawn what the drawing makes of it, mm; degrees for a turn
   */
  public record Contradicted(int index, double drawn) {}

  /**
   * Readings that drawn corners contradict, in the order taken; as many corners as the room has.
   */
  public static List<Contradicted> contradicted(AdjustedRoom room, List<Vec> drawn) {
    List<Vec> adjusted = room.corners().stream().map(AdjustedRoom.Corner::at).toList();
    List<Contradicted> all = new ArrayList<>();
    for (ReadingReport r : room.readings()) {
      double now = ClosingRemedy.valueAt(room.room(), r.index(), drawn);
      double then = ClosingRemedy.valueAt(room.room(), r.index(), adjusted);
      double by = r.turn() ? Math.IEEEremainder(now - then, 2 * Math.PI) : now - then;
      if (Math.abs(by) > (r.turn() ? MET_TURN : MET)) {
        all.add(new Contradicted(r.index(), r.turn() ? Math.toDegrees(now) : now));
      }
    }
    return all;
  }
}
