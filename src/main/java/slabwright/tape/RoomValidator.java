package slabwright.tape;

import java.util.Optional;
import slabwright.units.Message;

/** What makes a room's readings unusable before any sum is done. */
final class RoomValidator {
  private final TapeRoom room;

  private RoomValidator(TapeRoom room) {
    this.room = room;
  }

  static Optional<Message> refusal(TapeRoom room) {
    if (room.corners() < TapeRoom.FEWEST_CORNERS || room.corners() > TapeRoom.MOST_CORNERS) {
      return Optional.of(Message.of("tape.room-validator.number-of-walls", room.corners()));
    }
    if (!(room.tapeError().fixed().mm() > 0) || !(room.tapeError().share() >= 0)) {
      return Optional.of(Message.of("tape.room-validator.tape-error"));
    }
    RoomValidator check = new RoomValidator(room);
    return check.firstBad().or(check::curved).or(check::badNote);
  }

  private Optional<Message> firstBad() {
    return room.readings().stream()
        .filter(r -> !placed(r) || !measured(r))
        .findFirst()
        .map(
            r ->
                placed(r)
                    ? Message.of("tape.room-validator.no-usable-size", r.name(room.corners()))
                    : Message.of(
                        "tape.room-validator.no-such-corner", CornerName.of(room.corners() - 1)));
  }

  private Optional<Message> curved() {
    return room.readings().stream()
        .filter(r -> target(r) >= 0 && isCurved(target(r)))
        .findFirst()
        .map(r -> Message.of("tape.room-validator.ends-on-curve", r.name(room.corners())));
  }

  private Optional<Message> badNote() {
    return room.notes().stream()
        .filter(n -> !is(n.wall()))
        .findFirst()
        .map(n -> Message.of("tape.room-validator.no-such-wall"));
  }

  /** The wall a check ends on, or -1. */
  private static int target(Reading r) {
    if (r instanceof Reading.CornerToWall c) {
      return c.wall();
    }
    if (r instanceof Reading.CornerToSpot c) {
      return c.wall();
    }
    return r instanceof Reading.WallToWall w ? w.opposite() : -1;
  }

  private boolean isCurved(int wall) {
    return room.readings().stream().anyMatch(r -> r instanceof Reading.Curve c && c.wall() == wall);
  }

  private boolean measured(Reading r) {
    if (r instanceof Reading.Turn t) {
      return Math.abs(t.degrees()) <= 180;
    }
    Reading.Taped taped = (Reading.Taped) r;
    boolean length = taped.length().mm() > 0 && taped.length().mm() < 1e7;
    return length && taped.error().map(e -> e.mm() > 0).orElse(true) && rises(r);
  }

  private static boolean rises(Reading r) {
    return !(r instanceof Reading.Curve c) || (c.rise().mm() > 0 && c.rise().mm() < 1e6);
  }

  private boolean placed(Reading r) {
    if (r instanceof Reading.Turn t) {
      return is(t.corner());
    }
    if (r instanceof Reading.Along a) {
      return is(a.wall());
    }
    if (r instanceof Reading.Diagonal d) {
      return is(d.from()) && is(d.to()) && d.from() != d.to();
    }
    if (r instanceof Reading.CornerToWall c) {
      return is(c.corner()) && is(c.wall());
    }
    if (r instanceof Reading.CornerToSpot c) {
      return is(c.corner()) && is(c.wall());
    }
    Reading.WallToWall w = (Reading.WallToWall) r;
    return is(w.wall()) && is(w.opposite());
  }

  private boolean is(int corner) {
    return corner >= 0 && corner < room.corners();
  }
}
