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
    words.expect("check", "This is no check.");
    TapeSyntaxException place =
        words.syntaxError("A check goes from a corner or a wall: check C to A-B is 12'");
    String from = words.word(place.getMessage());
    boolean wall = from.contains("-");
    int at = wall ? wall(from, place) : corner(from, place);
    words.expect("to", "After where a check begins comes to: check C to A-B is 12' 3\"");
    TapeSyntaxException opposite = words.syntaxError("A check goes to a wall, written as A-B.");
    String wallName = words.word(opposite.getMessage());
    int to = wall(wallName, opposite);
    if (words.peek().equals("at")) {
      inOrder(wallName, to, opposite);
    }
    return wall ? wallToWall(at, to, opposite) : fromCorner(at, to, opposite);
  }

  /** A turn that was measured again: {@code turn at C right 91°}. */
  Reading turn() throws TapeSyntaxException {
    words.expect("turn", "This is no turn.");
    words.expect("at", "After turn comes at: turn at C right 91°");
    TapeSyntaxException where = words.syntaxError("A turn stands at a corner: turn at C right 91°");
    int corner = corner(words.word(where.getMessage()), where);
    return new TurnParser(words).read(corner);
  }

  /** A note on a wall: {@code open A-B}, {@code kerb C-D}, {@code doorway A-B at 3' wide 36"}. */
  WallNote note() throws TapeSyntaxException {
    String kind = words.word("This is no note.").toLowerCase(Locale.ROOT);
    TapeSyntaxException where = words.syntaxError("A note names a wall, as in: open A-B");
    String name = words.word(where.getMessage());
    int wall = wall(name, where);
    if (!kind.equals("doorway")) {
      return new WallNote.Ends(wall, kind.equals("kerb") ? PieceKind.KERB : PieceKind.OPEN_EDGE);
    }
    inOrder(name, wall, where);
    String example = "A doorway is written as: doorway A-B at 3' wide 36\"";
    words.expect("at", example);
    Length along = words.lengthFromZero("wide");
    words.expect("wide", example);
    return new WallNote.Door(wall, along, words.length("way"), wayIn());
  }

  private boolean wayIn() throws TapeSyntaxException {
    boolean way = words.accept("way");
    if (way) {
      words.expect("in", "After way comes in: doorway A-B at 3' wide 36\" way in");
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
          "Call this wall " + ordered + " and measure from " + CornerName.of(wall) + ".");
    }
  }

  private Reading diagonal() throws TapeSyntaxException {
    TapeSyntaxException first =
        words.syntaxError("A diagonal goes between two corners: diagonal A C 34' 5\"");
    int from = corner(words.word(first.getMessage()), first);
    TapeSyntaxException second = words.syntaxError(first.getMessage());
    int to = corner(words.word(first.getMessage()), second);
    if (from == to) {
      throw new TapeSyntaxException(second.column(), "A diagonal needs two different corners.");
    }
    words.accept("is");
    return new Reading.Diagonal(from, to, words.length(PLUS_MINUS), error());
  }

  private Reading wallToWall(int wall, int opposite, TapeSyntaxException where)
      throws TapeSyntaxException {
    if (wall == opposite) {
      throw new TapeSyntaxException(
          where.column(), "A check between walls needs two different walls.");
    }
    return new Reading.WallToWall(wall, opposite, is(), error());
  }

  private Reading fromCorner(int corner, int wall, TapeSyntaxException where)
      throws TapeSyntaxException {
    boolean spot = words.accept("at");
    if (!spot && (corner == wall || corner == (wall + 1) % corners)) {
      throw new TapeSyntaxException(
          where.column(), "This corner stands on that wall: measure to another one.");
    }
    if (spot) {
      Length along = words.length("is");
      return new Reading.CornerToSpot(corner, wall, along, is(), error());
    }
    return new Reading.CornerToWall(corner, wall, is(), error());
  }

  private Length is() throws TapeSyntaxException {
    words.expect("is", "Before the length of a check comes is: check C to A-B is 12' 3\"");
    return words.length(PLUS_MINUS);
  }

  private Optional<Length> error() throws TapeSyntaxException {
    return WallLineParser.error(words);
  }

  private int corner(String name, TapeSyntaxException where) throws TapeSyntaxException {
    OptionalInt index = CornerName.index(name);
    if (index.isEmpty()) {
      throw new TapeSyntaxException(
          where.column(), "\"" + name + "\" is no corner: corners are called A, B, C …");
    }
    if (index.getAsInt() >= corners) {
      throw new TapeSyntaxException(
          where.column(),
          "There is no corner " + name + ": the last one is " + CornerName.of(corners - 1) + ".");
    }
    return index.getAsInt();
  }

  /** The wall between two neighbours, named either way round. */
  private int wall(String name, TapeSyntaxException where) throws TapeSyntaxException {
    String[] ends = name.split("-", -1);
    if (ends.length != 2) {
      throw new TapeSyntaxException(
          where.column(), "\"" + name + "\" is no wall: write two corners as A-B.");
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
        where.column(), "No wall runs from " + ends[0] + " to " + ends[1] + ".");
  }
}
