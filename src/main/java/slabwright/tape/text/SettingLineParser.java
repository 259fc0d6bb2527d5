package slabwright.tape.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.tape.TapeError;
import slabwright.tape.TapeRoom;
import slabwright.tape.text.LineScanner.TapeSyntaxException;
import slabwright.units.Length;
import slabwright.units.Message;

/** The three settings of a tape file. */
final class SettingLineParser {
  private static final Pattern LIMIT = Pattern.compile("1/(\\d{1,6})");
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:[.,]\\d+)?)%");

  private SettingLineParser() {}

  static TapeRoom read(LineScanner words, TapeRoom room) throws TapeSyntaxException {
    if (words.accept("tape")) {
      words.expect("error", Message.of("tape.setting-line-parser.error-after-tape"));
      return room.withTapeError(tapeError(words));
    }
    if (words.accept("turn")) {
      words.expect("error", Message.of("tape.setting-line-parser.error-after-turn"));
      return room.withTurnError(Math.max(TapeRoom.SMALLEST_TURN_ERROR, words.degrees()));
    }
    words.expect("closing", Message.of("tape.setting-line-parser.no-setting"));
    words.expect("limit", Message.of("tape.setting-line-parser.limit-after-closing"));
    return room.withClosingLimit(limit(words));
  }

  private static TapeError tapeError(LineScanner words) throws TapeSyntaxException {
    Length fixed = words.length("+");
    if (!words.accept("+")) {
      return new TapeError(fixed, 0);
    }
    TapeSyntaxException misfit = words.syntaxError(Message.of("tape.setting-line-parser.share"));
    Matcher m = PERCENT.matcher(words.word(Message.of("tape.setting-line-parser.share")));
    if (!m.matches()) {
      throw misfit;
    }
    return new TapeError(fixed, LineScanner.number(m.group(1)) / 100);
  }

  private static double limit(LineScanner words) throws TapeSyntaxException {
    TapeSyntaxException misfit = words.syntaxError(Message.of("tape.setting-line-parser.limit"));
    Matcher m = LIMIT.matcher(words.word(Message.of("tape.setting-line-parser.limit")));
    if (!m.matches() || Integer.parseInt(m.group(1)) == 0) {
      throw misfit;
    }
    return 1.0 / Integer.parseInt(m.group(1));
  }
}
