package slabwright.tape.text;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.site.PieceKind;
import slabwright.tape.CornerName;
import slabwright.tape.Reading;
import slabwright.tape.WallNote;
import slabwright.tape.text.LineScanner.TapeSyntaxException;
import slabwright.units.Length;
import slabwright.units.Message;

/** A line beside the walk: a diagonal, a check, a turn once more, or a note on a wall. */
final class CrossReadingParser {
  private static final String[] PLUS_MINUS = {"±", "+/-", "+-"};

  private final LineScanner words;
  private final int corners;

  CrossReadingParser(LineScanner words, int corners) {
    this.words = words;
    this.corners = corners;
  }

  Reading read() throws TapeSyntaxException {
    if (words.accept("diagonal")) {
      return diagonal();
    }
    words.expect("check", Message.of("tape.cross-reading-parser.no-check"));
    TapeSyntaxException place =
        words.syntaxError(Message.of("tape.cross-reading-parser.check-from"));
    String from = words.word(place.why());
    boolean wall = from.contains("-");
    int at = wall ? wall(from, place) : corner(from, place);
    words.expect("to", Message.of("tape.cross-reading-parser.to-after-check"));
    TapeSyntaxException opposite =
        words.syntaxError(Message.of("tape.cross-reading-parser.check-to-wall"));
    String wallName = words.word(opposite.why());
    int to = wall(wallName, opposite);
    if (words.peek().equals("at")) {
      inOrder(wallName, to, opposite);
    }
    return wall ? wallToWall(at, to, opposite) : fromCorner(at, to, opposite);
  }

  /** A turn that was measured again: {@code turn at C right 91°}. */
  Reading turn() throws TapeSyntaxException {
    words.expect("turn", Message.of("tape.cross-reading-parser.no-turn"));
    words.expect("at", Message.of("tape.cross-reading-parser.at-after-turn"));
    TapeSyntaxException where =
        words.syntaxError(Message.of("tape.cross-reading-parser.turn-at-corner"));
    int corner = corner(words.word(where.why()), where);
    return new TurnParser(words).read(corner);
  }

  /** A note on a wall: {@code open A-B}, {@code kerb C-D}, {@code doorway A-B at 3' wide 36"}. */
  WallNote note() throws TapeSyntaxException {
    String kind =
        words.word(Message.of("tape.cross-reading-parser.no-note")).toLowerCase(Locale.ROOT);
    TapeSyntaxException where =
        words.syntaxError(Message.of("tape.cross-reading-parser.note-names-wall"));
    String name = words.word(where.why());
    int wall = wall(name, where);
    if (!kind.equals("doorway")) {
      return new WallNote.Ends(wall, kind.equals("kerb") ? PieceKind.KERB : PieceKind.OPEN_EDGE);
    }
    inOrder(name, wall, where);
    Message example = Message.of("tape.cross-reading-parser.doorway");
    words.expect("at", example);
    Length along = words.lengthFromZero("wide");
    words.expect("wide", example);
    return new WallNote.Door(wall, along, words.length("way"), wayIn());
  }

  private boolean wayIn() throws TapeSyntaxException {
    boolean way = words.accept("way");
    if (way) {
      words.expect("in", Message.of("tape.cross-reading-parser.in-after-way"));
    }
    return way;
  }

  /** Where a distance counts from the wall's first corner its name must say which that is. */
  private void inOrder(String name, int wall, TapeSyntaxException where)
      throws TapeSyntaxException {
    String ordered = CornerName.wall(wall, corners);
    if (!name.equalsIgnoreCase(ordered)) {
      throw new TapeSyntaxException(
          where.column(),
          Message.of("tape.cross-reading-parser.call-this-wall", ordered, CornerName.of(wall)));
    }
  }

  private Reading diagonal() throws TapeSyntaxException {
    TapeSyntaxException first = words.syntaxError(Message.of("tape.cross-reading-parser.diagonal"));
    int from = corner(words.word(first.why()), first);
    TapeSyntaxException second = words.syntaxError(first.why());
    int to = corner(words.word(first.why()), second);
    if (from == to) {
      throw new TapeSyntaxException(
          second.column(), Message.of("tape.cross-reading-parser.two-different-corners"));
    }
    words.accept("is");
    return new Reading.Diagonal(from, to, words.length(PLUS_MINUS), error());
  }

  private Reading wallToWall(int wall, int opposite, TapeSyntaxException where)
      throws TapeSyntaxException {
    if (wall == opposite) {
      throw new TapeSyntaxException(
          where.column(), Message.of("tape.cross-reading-parser.two-different-walls"));
    }
    return new Reading.WallToWall(wall, opposite, is(), error());
  }

  private Reading fromCorner(int corner, int wall, TapeSyntaxException where)
      throws TapeSyntaxException {
    boolean spot = words.accept("at");
    if (!spot && (corner == wall || corner == (wall + 1) % corners)) {
      throw new TapeSyntaxException(
          where.column(), Message.of("tape.cross-reading-parser.stands-on-that-wall"));
    }
    if (spot) {
      Length along = words.length("is");
      return new Reading.CornerToSpot(corner, wall, along, is(), error());
    }
    return new Reading.CornerToWall(corner, wall, is(), error());
  }

  private Length is() throws TapeSyntaxException {
    words.expect("is", Message.of("tape.cross-reading-parser.is-before-length"));
    return words.length(PLUS_MINUS);
  }

  private Optional<Length> error() throws TapeSyntaxException {
    return WallLineParser.error(words);
  }

  private int corner(String name, TapeSyntaxException where) throws TapeSyntaxException {
    OptionalInt index = CornerName.index(name);
    if (index.isEmpty()) {
      throw new TapeSyntaxException(
          where.column(), Message.of("tape.cross-reading-parser.no-corner", name));
    }
    if (index.getAsInt() >= corners) {
      throw new TapeSyntaxException(
          where.column(),
          Message.of(
              "tape.cross-reading-parser.beyond-last-corner", name, CornerName.of(corners - 1)));
    }
    return index.getAsInt();
  }

  /** The wall between two neighbours, named either way round. */
  private int wall(String name, TapeSyntaxException where) throws TapeSyntaxException {
    String[] ends = name.split("-", -1);
    if (ends.length != 2) {
      throw new TapeSyntaxException(
          where.column(), Message.of("tape.cross-reading-parser.no-wall", name));
    }
    int a = corner(ends[0], where);
    int b = corner(ends[1], where);
    if (b == (a + 1) % corners) {
      return a;
    }
    if (a == (b + 1) % corners) {
      return b;
    }
    throw new TapeSyntaxException(
        where.column(), Message.of("tape.cross-reading-parser.no-wall-between", ends[0], ends[1]));
  }
}
