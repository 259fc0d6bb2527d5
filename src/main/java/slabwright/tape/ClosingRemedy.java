package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.tape.leastsquares.Observation;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/**
 * One reading that, read otherwise, would make the others agree. It is computed from them, so it
 * says where to look; only the tape can say that it is so.
 *
 * @param reading its place among the room's readings
 * @param instead the reading as it would have to be
 * @param sentence which reading, and what would close it
 */
public record ClosingRemedy(int reading, Reading instead, Message sentence) {
  /**
   * What would make the readings of a room agree, the one blamed first; empty when they do agree or
   * nothing simple would.
   */
  public static List<ClosingRemedy> of(AdjustedRoom room, UnitSystem units) {
    List<ClosingRemedy> all = new ArrayList<>();
    for (TapeAdvice a : room.advice()) {
      if (a.kind() == TapeAdvice.Kind.LEFT_OUT || a.kind() == TapeAdvice.Kind.MEASURE_AGAIN) {
        a.readings().forEach(i -> byTheOthers(room.room(), i, units).ifPresent(all::add));
      } else if (a.kind() == TapeAdvice.Kind.WIDE_GAP) {
        all.addAll(closingWalls(room, units));
        all.addAll(closingTurns(room));
      } else if (a.kind() == TapeAdvice.Kind.MAYBE_SLIP) {
        a.readings().forEach(i -> all.add(bySlip(room, i, units)));
      }
    }
    return all;
  }

  /** What the corners that the other readings give make of a taped reading. */
  private static Optional<ClosingRemedy> byTheOthers(TapeRoom room, int index, UnitSystem units) {
    return room.readings().get(index) instanceof Reading.Taped taped
            && RoomAdjustment.of(room.without(index), units) instanceof RoomResult.Adjusted others
        ? Optional.of(taped(room, index, taped, valueAt(room, index, corners(others)), units))
        : Optional.empty();
  }

  private static List<Vec> corners(RoomResult.Adjusted others) {
    return others.room().corners().stream().map(AdjustedRoom.Corner::at).toList();
  }

  /**
   * What a reading would be if the corners lay here.
   *
   * @return mm; radians for a turn
   */
  static double valueAt(TapeRoom room, int index, List<Vec> corners) {
    double[] xy = new double[2 * corners.size()];
    for (int i = 0; i < corners.size(); i++) {
      xy[2 * i] = corners.get(i).x();
      xy[2 * i + 1] = corners.get(i).y();
    }
    TapeRoom alone = room.withReadings(List.of(room.readings().get(index)));
    Observation o = new RoomObservations(alone).rows().get(0);
    return o.read() - o.misfit(xy);
  }

  private static ClosingRemedy taped(
      TapeRoom room, int index, Reading.Taped taped, double mm, UnitSystem units) {
    Length length = Length.parse(LengthFormat.show(mm, units)).orThrow();
    return new ClosingRemedy(
        index,
        Readings.withLength(taped, length),
        Message.of(
            "tape.closing-remedy.would-close",
            LengthFormat.show(mm, units),
            taped.name(room.corners())));
  }

  private static ClosingRemedy bySlip(AdjustedRoom room, int index, UnitSystem units) {
    Reading.Along a = (Reading.Along) room.room().readings().get(index);
    return taped(room.room(), index, a, TraverseAdvice.fits(room.closing(), a), units);
  }

  /** Walls of a plain walk that would take up the whole gap. */
  private static List<ClosingRemedy> closingWalls(AdjustedRoom room, UnitSystem units) {
    ClosingReport closing = room.closing();
    List<ClosingRemedy> all = new ArrayList<>();
    List<Reading> readings = room.room().readings();
    for (int i = 0; i < readings.size(); i++) {
      if (readings.get(i) instanceof Reading.Along a) {
        double fits = TraverseAdvice.fits(closing, a);
        if (fits > 0) {
          ClosingRemedy remedy = taped(room.room(), i, a, fits, units);
          if (ClosingReport.of(room.room().replacing(i, remedy.instead())).closes(room.room())) {
            all.add(remedy);
          }
        }
      }
    }
    return all;
  }

  /** Turns of a plain walk that would close it the other way round. */
  private static List<ClosingRemedy> closingTurns(AdjustedRoom room) {
    TapeRoom taped = room.room();
    List<ClosingRemedy> all = new ArrayList<>();
    for (int i = 0; i < taped.readings().size(); i++) {
      if (taped.readings().get(i) instanceof Reading.Turn t) {
        Reading other = new Reading.Turn(t.corner(), -t.degrees(), t.trust(), t.error());
        if (ClosingReport.of(taped.replacing(i, other)).closes(taped)) {
          all.add(
              new ClosingRemedy(
                  i,
                  other,
                  Message.of(
                      "tape.closing-remedy.other-side",
                      t.name(taped.corners()),
                      Math.abs(t.degrees()))));
        }
      }
    }
    return all;
  }
}
