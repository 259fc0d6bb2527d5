package slabwright.tape.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    String share = error.share() == 0 ? "" : " + " + percent(error.share());
    line(line("tape", "error", error.fixed() + share));
    line(line("turn", "error", number(room.turnError()) + "°"));
    room.closingLimit().ifPresent(l -> line(line("closing", "limit", "1/" + Math.round(1 / l))));
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

  /** The file's own words, the same in every language, one beside the other. */
  private static String line(Object... words) {
    return Stream.of(words).map(String::valueOf).collect(Collectors.joining(" "));
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
      String side = c.outward() ? "outward" : "inward";
      return line("curve", c.length(), "rise", c.rise(), side + error(c.error()));
    }
    Reading.Wall w = (Reading.Wall) r;
    return line("wall", w.length() + error(w.error()));
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
      line(line("turn", "at", CornerName.of(t.corner())) + turn(t));
    } else if (r instanceof Reading.Taped t) {
      line(line(ends(t), t.length() + error(t.error())));
    }
  }

  /** What a length across the room runs between. */
  private String ends(Reading.Taped t) {
    if (t instanceof Reading.CornerToWall c) {
      return line("check", CornerName.of(c.corner()), "to", wall(c.wall()), "is");
    }
    if (t instanceof Reading.CornerToSpot c) {
      String corner = CornerName.of(c.corner());
      return line("check", corner, "to", wall(c.wall()), "at", c.along(), "is");
    }
    if (t instanceof Reading.WallToWall w) {
      return line("check", wall(w.wall()), "to", wall(w.opposite()), "is");
    }
    Reading.Diagonal d = (Reading.Diagonal) t;
    return line("diagonal", CornerName.of(d.from()), CornerName.of(d.to()));
  }

  private String wall(int wall) {
    return CornerName.wall(wall, room.corners());
  }

  private void note(WallNote note) {
    String wall = wall(note.wall());
    if (note instanceof WallNote.Door d) {
      String in = d.wayIn() ? line("", "way", "in") : "";
      line(line("doorway", wall, "at", d.along(), "wide", d.width()) + in);
    } else if (note instanceof WallNote.Ends e && e.kind() != PieceKind.WALL) {
      line(line(e.kind() == PieceKind.KERB ? "kerb" : "open", wall));
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
