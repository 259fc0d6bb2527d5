package slabwright.tape;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.LeastSquaresFit;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/**
 * Brings a room's readings to agree.
 *
 * <p>Held: the first corner and the direction of the first wall. Walls and turns alone are closed
 * by the compass rule; with anything more, weighted least squares on the corners from the walked
 * shape, weights from the stated errors. A gross error that the others can tell is named and left
 * out of the shape.
 *
 * <p>Sources: compass rule, error ellipse and least squares by C. Ghilani and P. Wolf,
 * <i>Adjustment Computations</i>; data snooping, redundancy numbers and 3.29 by W. Baarda, <i>A
 * testing procedure for use in geodetic networks</i>, 1968 (both from memory).
 */
public final class RoomAdjustment {
  /** No corner of a room lies so far from another; mm. */
  private static final double FARTHEST = 1e8;

  private RoomAdjustment() {}

  /**
   * Adjusts the room.
   *
   * @param units for the lengths in sentences
   * @param cancelled asked now and then
   * @throws CancellationException when {@code cancelled} says so
   */
  public static RoomResult of(TapeRoom room, UnitSystem units, BooleanSupplier cancelled) {
    return RoomValidator.refusal(room)
        .<RoomResult>map(RoomResult.Refused::new)
        .orElseGet(() -> adjust(room, units, cancelled));
  }

  /** Adjusts the room without a way to cancel. */
  public static RoomResult of(TapeRoom room, UnitSystem units) {
    return of(room, units, () -> false);
  }

  private static RoomResult adjust(TapeRoom room, UnitSystem units, BooleanSupplier cancelled) {
    RoomObservations observations = new RoomObservations(room);
    AdjustmentSolution solution = new AdjustmentSolver(observations, cancelled).solve();
    if (!solution.fit().settled() || fliesOff(solution.fit())) {
      return new RoomResult.Refused(
          new SlipSearch(room, cancelled)
              .sentence()
              .orElseGet(() -> Message.of("tape.room-adjustment.does-not-settle")));
    }
    if (solution.quality().isEmpty()) {
      return needsMore(observations, solution, units);
    }
    return new RoomResult.Adjusted(
        new AdjustedRoomBuilder(room, observations, solution, units).build());
  }

  /** Readings that contradict each other can drive a corner out without end. */
  private static boolean fliesOff(LeastSquaresFit fit) {
    return !Arrays.stream(fit.xy()).allMatch(c -> Math.abs(c) < FARTHEST);
  }

  private static RoomResult needsMore(
      RoomObservations observations, AdjustmentSolution solution, UnitSystem u) {
    List<Reading.Diagonal> diagonals =
        new NextDiagonal(observations, solution.fit().xy())
            .untilFixed().stream().map(RoomAdjustment::toTape).toList();
    return new RoomResult.NeedsMore(
        sentence(diagonals, u), diagonals, ClosingReport.of(observations));
  }

  private static Reading.Diagonal toTape(DistanceObservation s) {
    return new Reading.Diagonal(s.from(), s.to(), Length.mm(s.read()), Optional.empty());
  }

  private static Message sentence(List<Reading.Diagonal> diagonals, UnitSystem units) {
    if (diagonals.isEmpty()) {
      return Message.of("tape.room-adjustment.measure-more");
    }
    Message list = ReadingWords.list(diagonals.stream().map(d -> about(d, units)).toList());
    return diagonals.size() > 1
        ? Message.of("tape.room-adjustment.measure-diagonals", list)
        : Message.of("tape.room-adjustment.measure-diagonal", list);
  }

  private static Message about(Reading.Diagonal d, UnitSystem units) {
    return Message.of(
        "tape.room-adjustment.diagonal-about",
        CornerName.of(d.from()),
        CornerName.of(d.to()),
        LengthFormat.show(d.length(), units));
  }
}
