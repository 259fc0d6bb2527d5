package slabwright.tape;

import java.util.Optional;
import slabwright.tape.Reading.Trust;
import slabwright.tape.Words.Misfit;

/** The words that say how the walk turns at a corner: {@code right}, {@code left corner 135°}. */
final class TurnWords {
  /** The smallest error of a turn in degrees; smaller ones would only hurt the arithmetic. */
  static final double SMALLEST_ERROR = 0.001;

  private final Words words;

  TurnWords(Words words) {
    this.words = words;
  }

  Reading.Turn read(int corner) throws Misfit {
    double side = side();
    Trust trust = trust(words);
    double degrees = side == 0 ? 0 : angle();
    trust = trust == Trust.READ ? trust(words) : trust;
    Optional<Double> error =
        words.takePlusMinus()
            ? Optional.of(Math.max(SMALLEST_ERROR, words.degrees()))
            : Optional.empty();
    return new Reading.Turn(corner, side * degrees, trust, error);
  }

  private double side() throws Misfit {
    if (words.take("left")) {
      return 1;
    }
    if (words.take("right")) {
      return -1;
    }
    words.expect("straight", "After a wall comes left, right or straight.");
    return 0;
  }

  private static Trust trust(Words words) {
    if (words.take("about")) {
      return Trust.ABOUT;
    }
    return words.take("true") ? Trust.TRUE : Trust.READ;
  }

  /** By how much: nothing said is a quarter turn; a corner is measured between the walls. */
  private double angle() throws Misfit {
    boolean corner = words.take("corner");
    if (!corner && (words.done() || !Character.isDigit(words.peek().charAt(0)))) {
      return 90;
    }
    Misfit tooMuch = words.misfit("A turn or a corner is more than 0° and less than 180°.");
    double degrees = words.degrees("true", "±", "+/-", "+-");
    if (degrees <= 0 || degrees >= 180) {
      throw tooMuch;
    }
    return corner ? 180 - degrees : degrees;
  }
}
