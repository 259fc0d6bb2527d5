package slabwright.inlay.artwork.css;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How many corners an outline has, each of which may carry a marker. */
final class MarkerVertices {
  private static final Pattern TOKEN =
      Pattern.compile("([a-df-zA-DF-Z])|[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?");

  private MarkerVertices() {}

  static long of(SvgElement e) {
    return switch (e.name) {
      case "line" -> 2;
      case "polyline", "polygon" -> 1 + numbers(e.get("points")) / 2;
      case "path" -> path(e.get("d"));
      default -> 0;
    };
  }

  private static long numbers(String text) {
    return TOKEN.matcher(text).results().count();
  }

  private static long path(String d) {
    Matcher m = TOKEN.matcher(d);
    long corners = 0;
    int each = 2;
    int seen = 0;
    while (m.find()) {
      if (m.group(1) != null) {
        each = numbersEach(m.group(1).charAt(0));
        corners += each == 0 ? 1 : 0;
        seen = 0;
      } else if (each > 0 && ++seen % each == 0) {
        corners++;
      }
    }
    return corners;
  }

  /** How many numbers one piece of a path command takes. */
  private static int numbersEach(char command) {
    return switch (Character.toLowerCase(command)) {
      case 'z' -> 0;
      case 'h', 'v' -> 1;
      case 'q', 's' -> 4;
      case 'c' -> 6;
      case 'a' -> 7;
      default -> 2;
    };
  }
}
