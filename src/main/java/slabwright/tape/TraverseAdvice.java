package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.tape.TapeAdvice.Kind;
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
    if (closing.ratio() <= room.closingLimit()) {
      return Optional.empty();
    }
    List<Integer> walls = alongTheGap();
    Message gap =
        Message.of(
            "tape.traverse-advice.does-not-close",
            LengthFormat.show(closing.gap().length(), units),
            LengthFormat.show(closing.perimeter(), units),
            closing.oneIn(),
            Math.round(1 / room.closingLimit()));
    return Optional.of(new TapeAdvice(Kind.WIDE_GAP, withPlace(gap, walls), List.of(), walls));
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

  /** A wall whose digits exchanged would close the walk. */
  private Optional<Message> swapped(Message gap) {
    for (Reading r : room.readings()) {
      if (r instanceof Reading.Along a) {
        int k = a.wall();
        Vec wall = closing.path().get(k + 1).minus(closing.path().get(k)).unit();
        double fits = a.length().mm() - closing.gap().dot(wall);
        boolean along = Math.abs(closing.gap().cross(wall)) <= allowed();
        Optional<String> text =
            along ? Misreading.swapped(a.length(), fits, allowed()) : Optional.empty();
        if (text.isPresent()) {
          return Optional.of(closes(gap, a, text.get()));
        }
      }
    }
    return Optional.empty();
  }

  private Message closes(Message gap, Reading.Along a, String text) {
    return Message.of(
        "tape.traverse-advice.digits-exchanged",
        gap,
        text,
        a.length().toString(),
        a.name(room.corners()));
  }

  /** A turn that would close the walk if it went the other way. */
  private Optional<Message> otherSide(Message gap) {
    for (int i = 0; i < room.readings().size(); i++) {
      if (room.readings().get(i) instanceof Reading.Turn t) {
        Reading other = new Reading.Turn(t.corner(), -t.degrees(), t.trust(), t.error());
        ClosingReport flipped = ClosingReport.of(room.replacing(i, other));
        if (flipped.gap().length() <= allowed()) {
          return Optional.of(
              Message.of("tape.traverse-advice.turn-exchanged", gap, t.name(room.corners())));
        }
      }
    }
    return Optional.empty();
  }

  private double allowed() {
    return room.closingLimit() * closing.perimeter();
  }

  private Message names(List<Integer> walls) {
    return walls.stream()
        .map(k -> Message.of("tape.reading.wall", CornerName.wall(k, room.corners())))
        .reduce((a, b) -> Message.of("tape.traverse-advice.and", a, b))
        .orElseThrow();
  }
}
