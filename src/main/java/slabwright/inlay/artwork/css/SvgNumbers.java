package slabwright.inlay.artwork.css;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Path data, points and sizes as far as they can be read. A browser draws a path up to its first
 * error (SVG 1.1, appendix F.2); the SVG library refuses the whole drawing.
 */
final class SvgNumbers {
  private static final Pattern NUMBER =
      Pattern.compile("[\\s,]*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)");
  private static final Pattern FLAG = Pattern.compile("[\\s,]*([01])");
  private static final Pattern COMMAND = Pattern.compile("[\\s,]*([MmZzLlHhVvCcSsQqTtAa])");
  private static final Pattern LENGTH =
      Pattern.compile(
          "\\s*[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?\\s*"
              + "(?:%|px|pt|pc|mm|cm|in|em|ex)?\\s*");

  private static final int ARC_LARGE = 3;
  private static final int ARC_SWEEP = 4;

  private final String text;
  private int at;

  private SvgNumbers(String text) {
    this.text = text;
  }

  static boolean isLength(String value) {
    return LENGTH.matcher(value).matches();
  }

  /** The path data up to its first error. */
  static String path(String d) {
    SvgNumbers reader = new SvgNumbers(d);
    int good = 0;
    char command = 0;
    while (true) {
      Matcher m = COMMAND.matcher(d).region(reader.at, d.length());
      boolean named = m.lookingAt();
      if (named) {
        command = m.group(1).charAt(0);
        reader.at = m.end();
      }
      boolean may = named ? good > 0 || Character.toLowerCase(command) == 'm' : isRepeated(command);
      if (!may || !reader.operands(command)) {
        return d.substring(0, good);
      }
      good = reader.at;
      command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
    }
  }

  private static boolean isRepeated(char command) {
    return command != 0 && Character.toLowerCase(command) != 'z';
  }

  private boolean operands(char command) {
    int count = count(command);
    for (int i = 0; i < count; i++) {
      boolean flag = Character.toLowerCase(command) == 'a' && (i == ARC_LARGE || i == ARC_SWEEP);
      if (!take(flag ? FLAG : NUMBER)) {
        return false;
      }
    }
    return true;
  }

  private static int count(char command) {
    return switch (Character.toLowerCase(command)) {
      case 'z' -> 0;
      case 'h', 'v' -> 1;
      case 'c' -> 6;
      case 's', 'q' -> 4;
      case 'a' -> 7;
      default -> 2;
    };
  }

  private boolean take(Pattern what) {
    Matcher m = what.matcher(text).region(at, text.length());
    if (!m.lookingAt()) {
      return false;
    }
    at = m.end();
    return true;
  }

  /** The points up to the first error; a number without its pair goes. */
  static String points(String list) {
    SvgNumbers reader = new SvgNumbers(list);
    int good = 0;
    while (reader.take(NUMBER)) {
      if (!reader.take(NUMBER)) {
        break;
      }
      good = reader.at;
    }
    return list.substring(0, good);
  }

  /** Whether nothing but space and commas follows what was read. */
  static boolean isWhole(String text, String read) {
    return text.substring(read.length()).replace(",", " ").isBlank()
        || text.strip().toLowerCase(Locale.ROOT).equals("none");
  }
}
