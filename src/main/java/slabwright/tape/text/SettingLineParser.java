package slabwright.tape.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.tape.TapeError;
import slabwright.tape.TapeRoom;
import slabwright.tape.text.LineScanner.TapeSyntaxException;
import slabwright.units.Length;

/** The three settings of a tape file. */
final class SettingLineParser {
  private static final Pattern LIMIT = Pattern.compile("1/(\\d{1,6})");
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:[.,]\\d+)?)%");

  private SettingLineParser() {}

  static TapeRoom read(LineScanner words, TapeRoom room) throws TapeSyntaxException {
    if (words.accept("tape")) {
      words.expect("error", "After tape comes error, as in: tape error 1/8\" + 0.02%");
      return room.withTapeError(tapeError(words));
    }
    if (words.accept("turn")) {
      words.expect("error", "After turn comes error, as in: turn error 0.5°");
      return room.withTurnError(Math.max(TapeRoom.SMALLEST_TURN_ERROR, words.degrees()));
    }
    words.expect("closing", "This is no setting.");
    words.expect("limit", "After closing comes limit, as in: closing limit 1/500");
    return room.withClosingLimit(limit(words));
  }

  private static TapeError tapeError(LineScanner words) throws TapeSyntaxException {
    Length fixed = words.length("+");
    if (!words.accept("+")) {
      return new TapeError(fixed, 0);
    }
    TapeSyntaxException misfit = words.syntaxError("A share is written as 0.02%.");
    Matcher m = PERCENT.matcher(words.word("A share is written as 0.02%."));
    if (!m.matches()) {
      throw misfit;
    }
    return new TapeError(fixed, LineScanner.number(m.group(1)) / 100);
  }

  private static double limit(LineScanner words) throws TapeSyntaxException {
    TapeSyntaxException misfit = words.syntaxError("A closing limit is written as 1/500.");
    Matcher m = LIMIT.matcher(words.word("A closing limit is written as 1/500."));
    if (!m.matches() || Integer.parseInt(m.group(1)) == 0) {
      throw misfit;
    }
    return 1.0 / Integer.parseInt(m.group(1));
  }
}
