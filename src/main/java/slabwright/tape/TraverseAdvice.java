package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.tape.TapeAdvice.Kind;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** What a plain walk that closes badly says about where to look. */
final class TraverseAdvice {
  /** A wall within this of the gap's direction may be at fault for it. */
  private static final double ALONG = Math.cos(Math.toRadians(15));

  private final TapeRoom room;
  private final ClosingReport closing;
  private final UnitSystem units;

  TraverseAdvice(TapeRoom room, ClosingReport closing, UnitSystem units) {
    this.room = room;
    this.closing = closing;
    this.units = units;
  }

  Optional<TapeAdvice> wideGap() {
    if (closing.closes(room)) {
      return Optional.empty();
    }
    List<Integer> walls = alongTheGap();
    return Optional.of(new TapeAdvice(Kind.WIDE_GAP, withPlace(gap(), walls), List.of(), walls));
  }

  /**
   * A foot or a metre too many on one wall, or two digits exchanged, where the turns are too loose
   * to show it: the tape alone would not leave such a gap, and with that wall read otherwise it
   * leaves none.
   */
  Optional<TapeAdvice> maybeSlip() {
    List<Integer> slips = new ArrayList<>();
    for (int i = 0;
        closing.complete() && !closing.closesByTape() && i < room.readings().size();
        i++) {
      if (room.readings().get(i) instanceof Reading.Along a && isSlip(i, a)) {
        slips.add(i);
      }
    }
    if (slips.isEmpty()) {
      return Optional.empty();
    }
    List<Integer> walls =
        slips.stream().map(i -> ((Reading.Along) room.readings().get(i)).wall()).toList();
    String gap = LengthFormat.show(closing.gap().length(), units);
    return Optional.of(
        new TapeAdvice(
            Kind.MAYBE_SLIP,
            Message.of("tape.traverse-advice.may-be-slip", gap, names(walls)),
            slips,
            walls));
  }

  private boolean isSlip(int reading, Reading.Along a) {
    double fits = fits(closing, a);
    if (fits <= 0 || Misreading.of(a.length(), fits, closing.byTape()).isEmpty()) {
      return false;
    }
    Reading other = Readings.withLength(a, Length.mm(fits));
    return ClosingReport.of(room.replacing(reading, other)).closesByTape();
  }

  /** What a wall would have to be to take up the gap in its own direction, mm. */
  static double fits(ClosingReport closing, Reading.Along a) {
    Vec wall = closing.path().get(a.wall() + 1).minus(closing.path().get(a.wall())).unit();
    return a.length().mm() - closing.gap().dot(wall);
  }

  private Message gap() {
    String gap = LengthFormat.show(closing.gap().length(), units);
    String way = LengthFormat.show(closing.perimeter(), units);
    return room.closingLimit().isPresent()
        ? Message.of(
            "tape.traverse-advice.does-not-close",
            gap,
            way,
            closing.oneIn(),
            Math.round(1 / room.closingLimit().getAsDouble()))
        : Message.of(
            "tape.traverse-advice.beyond-stated-errors",
            gap,
            way,
            closing.oneIn(),
            LengthFormat.show(closing.likely(), units));
  }

  private Message withPlace(Message gap, List<Integer> walls) {
    return swapped(gap)
        .or(() -> otherSide(gap))
        .orElseGet(
            () ->
                walls.isEmpty()
                    ? Message.of("tape.traverse-advice.no-wall-that-way", gap)
                    : Message.of("tape.traverse-advice.runs-along", gap, names(walls)));
  }

  private List<Integer> alongTheGap() {
    List<Integer> walls = new ArrayList<>();
    Vec gap = closing.gap().unit();
    for (int k = 0; k < room.corners(); k++) {
      Vec wall = closing.path().get(k + 1).minus(closing.path().get(k)).unit();
      if (Math.abs(wall.dot(gap)) >= ALONG) {
        walls.add(k);
      }
    }
    return walls;
  }

  /** Walls whose digits exchanged would close the walk, two of them at most. */
  private Optional<Message> swapped(Message gap) {
    List<Message> ways = new ArrayList<>();
    for (int i = 0; i < room.readings().size(); i++) {
      if (room.readings().get(i) instanceof Reading.Along a) {
        for (Length other : Misreading.swaps(a.length())) {
          TapeRoom read = room.replacing(i, Readings.withLength(a, other));
          if (ClosingReport.of(read).closes(read)) {
            ways.add(closes(ways.isEmpty() ? gap : ways.get(0), a, other, ways.isEmpty()));
          }
        }
      }
    }
    return ways.stream().limit(2).reduce((first, second) -> second);
  }

  private Message closes(Message before, Reading.Along a, Length other, boolean first) {
    String read = a.length().toString();
    Message name = a.name(room.corners());
    return first
        ? Message.of("tape.traverse-advice.digits-exchanged", before, other.typed(), read, name)
        : Message.of("tape.traverse-advice.or-digits-exchanged", before, other.typed(), read, name);
  }

  /** A turn that would close the walk if it went the other way. */
  private Optional<Message> otherSide(Message gap) {
    for (int i = 0; i < room.readings().size(); i++) {
      if (room.readings().get(i) instanceof Reading.Turn t) {
        Reading other = new Reading.Turn(t.corner(), -t.degrees(), t.trust(), t.error());
        ClosingReport flipped = ClosingReport.of(room.replacing(i, other));
        if (flipped.closes(room)) {
          return Optional.of(
              Message.of("tape.traverse-advice.turn-exchanged", gap, t.name(room.corners())));
        }
      }
    }
    return Optional.empty();
  }

  private Message names(List<Integer> walls) {
    return walls.stream()
        .map(k -> Message.of("tape.reading.wall", CornerName.wall(k, room.corners())))
        .reduce((a, b) -> Message.of("tape.traverse-advice.and", a, b))
        .orElseThrow();
  }
}
