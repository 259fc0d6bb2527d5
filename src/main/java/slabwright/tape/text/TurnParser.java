package slabwright.tape.text;

import java.util.Optional;
import slabwright.tape.Reading;
import slabwright.tape.Reading.Trust;
import slabwright.tape.TapeRoom;
import slabwright.tape.text.LineScanner.TapeSyntaxException;
import slabwright.units.Message;

/** The words that say how the walk turns at a corner: {@code right}, {@code left corner 135°}. */
final class TurnParser {
  private final LineScanner words;

  TurnParser(LineScanner words) {
    this.words = words;
  }

  Reading.Turn read(int corner) throws TapeSyntaxException {
    double side = side();
    Trust trust = trust(words);
    double degrees = side == 0 ? 0 : angle();
    trust = trust == Trust.READ ? trust(words) : trust;
    Optional<Double> error =
        words.acceptPlusMinus()
            ? Optional.of(Math.max(TapeRoom.SMALLEST_TURN_ERROR, words.degrees()))
            : Optional.empty();
    return new Reading.Turn(corner, side * degrees, trust, error);
  }

  private double side() throws TapeSyntaxException {
    if (words.accept("left")) {
      return 1;
    }
    if (words.accept("right")) {
      return -1;
    }
    words.expect("straight", Message.of("tape.turn-parser.side"));
    return 0;
  }

  private static Trust trust(LineScanner words) {
    if (words.accept("about")) {
      return Trust.ABOUT;
    }
    return words.accept("true") ? Trust.TRUE : Trust.READ;
  }

  /** By how much: nothing said is a quarter turn; a corner is measured between the walls. */
  private double angle() throws TapeSyntaxException {
    boolean corner = words.accept("corner");
    if (!corner && (words.isAtEnd() || !Character.isDigit(words.peek().charAt(0)))) {
      return 90;
    }
    TapeSyntaxException tooMuch = words.syntaxError(Message.of("tape.turn-parser.size-of-turn"));
    double degrees = words.degrees("true", "±", "+/-", "+-");
    if (degrees <= 0 || degrees >= 180) {
      throw tooMuch;
    }
    return corner ? 180 - degrees : degrees;
  }
}
