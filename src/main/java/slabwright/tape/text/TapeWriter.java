package slabwright.tape.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slabwright.site.PieceKind;
import slabwright.tape.CornerName;
import slabwright.tape.Reading;
import slabwright.tape.Reading.Along;
import slabwright.tape.Reading.Trust;
import slabwright.tape.TapeError;
import slabwright.tape.TapeRoom;
import slabwright.tape.WallNote;
import slabwright.units.Length;

/** Writes a taped room: settings, the walk, then what was measured across. */
final class TapeWriter {
  private final TapeRoom room;
  private final StringBuilder out = new StringBuilder();

  TapeWriter(TapeRoom room) {
    this.room = room;
  }

  String write() {
    TapeError error = room.tapeError();
    line(
        "tape error " + error.fixed() + (error.share() == 0 ? "" : " + " + percent(error.share())));
    line("turn error " + number(room.turnError()) + "°");
    line("closing limit 1/" + Math.round(1 / room.closingLimit()));
    out.append('\n');
    List<Reading> across = new ArrayList<>(room.readings());
    for (int wall = 0; wall < room.corners(); wall++) {
      wall(wall, across);
    }
    across.forEach(this::across);
    room.notes().forEach(this::note);
    return out.toString();
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  /** Takes a wall's first length and first turn; what was read again goes below as across. */
  private void wall(int wall, List<Reading> left) {
    int corner = next(wall);
    Optional<Reading> length =
        left.stream().filter(r -> r instanceof Along a && a.wall() == wall).findFirst();
    Optional<Reading> turn =
        left.stream().filter(r -> r instanceof Reading.Turn t && t.corner() == corner).findFirst();
    length.ifPresent(left::remove);
    turn.ifPresent(left::remove);
    line(length.map(this::length).orElse("wall ?") + turn.map(this::turn).orElse(""));
  }

  private String length(Reading r) {
    if (r instanceof Reading.Curve c) {
      String side = c.outward() ? " outward" : " inward";
      return "curve " + c.length() + " rise " + c.rise() + side + error(c.error());
    }
    Reading.Wall w = (Reading.Wall) r;
    return "wall " + w.length() + error(w.error());
  }

  private String turn(Reading r) {
    Reading.Turn t = (Reading.Turn) r;
    String side = t.degrees() == 0 ? " straight" : t.degrees() > 0 ? " left" : " right";
    double by = Math.abs(t.degrees());
    String trust =
        switch (t.trust()) {
          case READ -> "";
          case TRUE -> " true";
          case ABOUT -> " about";
        };
    String degrees = by == 0 || by == 90 ? "" : " " + number(by) + "°";
    String error = t.error().map(e -> " ± " + number(e) + "°").orElse("");
    return t.trust() == Trust.ABOUT
        ? side + trust + degrees + error
        : side + degrees + trust + error;
  }

  private void across(Reading r) {
    if (r instanceof Along a) {
      across(new Reading.Diagonal(a.wall(), next(a.wall()), a.length(), a.error()));
    } else if (r instanceof Reading.Turn t) {
      line(t.name(room.corners()) + turn(t));
    } else if (r instanceof Reading.Taped t) {
      String is = r instanceof Reading.Diagonal ? " " : " is ";
      line(r.name(room.corners()) + is + t.length() + error(t.error()));
    }
  }

  private void note(WallNote note) {
    String wall = CornerName.wall(note.wall(), room.corners());
    if (note instanceof WallNote.Door d) {
      String in = d.wayIn() ? " way in" : "";
      line("doorway " + wall + " at " + d.along() + " wide " + d.width() + in);
    } else if (note instanceof WallNote.Ends e && e.kind() != PieceKind.WALL) {
      line((e.kind() == PieceKind.KERB ? "kerb " : "open ") + wall);
    }
  }

  private int next(int corner) {
    return (corner + 1) % room.corners();
  }

  private static String error(Optional<Length> error) {
    return error.map(e -> " ± " + e).orElse("");
  }

  private static String percent(double share) {
    return number(share * 100) + "%";
  }

  /** To six decimals, without needless zeros. */
  private static String number(double v) {
    String text = String.format(Locale.ROOT, "%.6f", v);
    return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }
}
