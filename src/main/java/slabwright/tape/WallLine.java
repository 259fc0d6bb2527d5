package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.tape.Words.Misfit;
import slabwright.units.Length;

/** A line of the walk: a wall, straight or curved, and the turn at its end. */
final class WallLine {
  private static final String[] AFTER_LENGTH = {"left", "right", "straight", "±", "+/-", "+-"};

  private final Words words;
  private final int corners;
  private final int wall;
  private final List<Reading> readings = new ArrayList<>();

  WallLine(Words words, int corners, int wall) {
    this.words = words;
    this.corners = corners;
    this.wall = wall;
  }

  List<Reading> read() throws Misfit {
    if (words.take("curve")) {
      curve();
    } else {
      words.expect("wall", "This is no wall.");
      straight();
    }
    if (!words.done()) {
      readings.add(new TurnWords(words).read((wall + 1) % corners));
    }
    return readings;
  }

  private void straight() throws Misfit {
    if (!words.take("?")) {
      Length length = words.length(AFTER_LENGTH);
      readings.add(new Reading.Wall(wall, length, error(words, AFTER_LENGTH)));
    }
  }

  private void curve() throws Misfit {
    Length chord = words.length("rise");
    words.expect("rise", "After a curve's chord comes its rise: curve 10' rise 1' 2\" outward");
    Length rise = words.length("outward", "inward");
    boolean outward = words.take("outward");
    if (!outward) {
      words.expect("inward", "Say which way the wall bulges: outward or inward.");
    }
    readings.add(new Reading.Curve(wall, chord, rise, outward, error(words, AFTER_LENGTH)));
  }

  /** The error that stands behind a single length. */
  static Optional<Length> error(Words words, String... stops) throws Misfit {
    return words.takePlusMinus() ? Optional.of(words.length(stops)) : Optional.empty();
  }
}
