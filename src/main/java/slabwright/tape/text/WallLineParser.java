package slabwright.tape.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.tape.Reading;
import slabwright.tape.text.LineScanner.TapeSyntaxException;
import slabwright.units.Length;
import slabwright.units.Message;

/** A line of the walk: a wall, straight or curved, and the turn at its end. */
final class WallLineParser {
  private static final String[] AFTER_LENGTH = {"left", "right", "straight", "±", "+/-", "+-"};

  private final LineScanner words;
  private final int corners;
  private final int wall;
  private final List<Reading> readings = new ArrayList<>();

  WallLineParser(LineScanner words, int corners, int wall) {
    this.words = words;
    this.corners = corners;
    this.wall = wall;
  }

  List<Reading> read() throws TapeSyntaxException {
    if (words.accept("curve")) {
      curve();
    } else {
      words.expect("wall", Message.of("tape.wall-line-parser.no-wall"));
      straight();
    }
    if (!words.isAtEnd()) {
      readings.add(new TurnParser(words).read((wall + 1) % corners));
    }
    return readings;
  }

  private void straight() throws TapeSyntaxException {
    if (!words.accept("?")) {
      Length length = words.length(AFTER_LENGTH);
      readings.add(new Reading.Wall(wall, length, error(words, AFTER_LENGTH)));
    }
  }

  private void curve() throws TapeSyntaxException {
    Length chord = words.length("rise");
    words.expect("rise", Message.of("tape.wall-line-parser.rise"));
    Length rise = words.length("outward", "inward");
    boolean outward = words.accept("outward");
    if (!outward) {
      words.expect("inward", Message.of("tape.wall-line-parser.bulge"));
    }
    readings.add(new Reading.Curve(wall, chord, rise, outward, error(words, AFTER_LENGTH)));
  }

  /** The error that stands behind a single length. */
  static Optional<Length> error(LineScanner words, String... stops) throws TapeSyntaxException {
    return words.acceptPlusMinus() ? Optional.of(words.length(stops)) : Optional.empty();
  }
}
