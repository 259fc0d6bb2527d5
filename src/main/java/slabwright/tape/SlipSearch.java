package slabwright.tape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import slabwright.tape.leastsquares.Datum;
import slabwright.tape.leastsquares.LeastSquaresFit;
import slabwright.tape.leastsquares.LeastSquaresFitter;
import slabwright.tape.leastsquares.Traverse;
import slabwright.units.Length;
import slabwright.units.Message;

/**
 * For readings that don't settle into any shape: which two digits exchanged would let them. On a
 * long wall a slip is so large that no shape is left to tell a suspect by.
 */
final class SlipSearch {
  /** More readings than this that a slip could be in tell nothing. */
  private static final int MOST_NAMED = 3;

  private final TapeRoom room;
  private final BooleanSupplier cancelled;

  SlipSearch(TapeRoom room, BooleanSupplier cancelled) {
    this.room = room;
    this.cancelled = cancelled;
  }

  private record Slip(Reading.Taped reading, Length instead, double sum) {}

  /** What to say of it; empty where no such slip explains the readings, or too many would. */
  Optional<Message> sentence() {
    List<Slip> slips = slips();
    if (slips.isEmpty() || slips.size() > MOST_NAMED) {
      return Optional.empty();
    }
    Message said = Message.of("tape.room-adjustment.does-not-settle-now");
    for (Slip s : slips) {
      said =
          Message.of(
              "tape.room-adjustment.settles-with",
              said,
              s.instead().typed(),
              s.reading().length().toString(),
              s.reading().name(room.corners()));
    }
    return Optional.of(said);
  }

  /** The best of each reading, best first. */
  private List<Slip> slips() {
    List<Slip> all = new ArrayList<>();
    for (int i = 0; i < room.readings().size(); i++) {
      if (room.readings().get(i) instanceof Reading.Taped taped) {
        int index = i;
        Misreading.swaps(taped.length()).stream()
            .flatMap(other -> slip(index, taped, other).stream())
            .min(Comparator.comparingDouble(Slip::sum))
            .ifPresent(all::add);
      }
    }
    all.sort(Comparator.comparingDouble(Slip::sum));
    return all;
  }

  private Optional<Slip> slip(int index, Reading.Taped taped, Length other) {
    RoomObservations read =
        new RoomObservations(room.replacing(index, Readings.withLength(taped, other)));
    Traverse walk = Traverse.of(read.about(), read.rows(), -1);
    LeastSquaresFitter fitter =
        new LeastSquaresFitter(Datum.firstWall(room.corners()), read.rows(), cancelled);
    LeastSquaresFit fit = fitter.from(walk.closedCorners());
    LeastSquaresFit best = fitter.good(fit) ? fit : fit.better(fitter.from(walk.corners()));
    return fitter.good(best)
        ? Optional.of(new Slip(taped, other, best.sumOfSquares()))
        : Optional.empty();
  }
}
