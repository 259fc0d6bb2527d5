package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks one paragraph into lines of a width, at spaces where it can. */
final class TextWrap {
  /** What ends in a number, or in a number and the first word of its unit. */
  private static final Pattern NUMBER = Pattern.compile("(?:.* )?\\W*[\\d.,/]*\\d(?:′| sq| fl)?");

  private static final Pattern UNIT =
      Pattern.compile(
          "(?:sq|fl|ft|in|oz|gal|lb|lbs|mil|mils|cfm|m|m²|mm|mm²|cm²|kg|g|L|mL|µm|m³/h|km/h|mph|ppm"
              + "|%|°F|°C|h|min|d|×|pt)[.,;:)]*");

  private static final Pattern INCHES = Pattern.compile("\\d+");

  private static final Pattern FRACTION = Pattern.compile("\\d+(?:/\\d+)?″[.,;:)]*");

  private final TextStyle style;
  private final double width;
  private final List<String> lines = new ArrayList<>();
  private String line = "";

  TextWrap(TextStyle style, double width) {
    this.style = style;
    this.width = width;
  }

  List<String> lines(String paragraph) {
    for (String word : glued(paragraph.split(" +", -1))) {
      if (fits(word)) {
        add(word);
      } else {
        for (String part : word.split(" ", -1)) {
          add(part);
        }
      }
    }
    lines.add(line);
    return lines;
  }

  /** The words, a number joined with its fraction and its unit. */
  static List<String> glued(String[] words) {
    List<String> all = new ArrayList<>();
    for (String word : words) {
      String before = all.isEmpty() ? "" : all.get(all.size() - 1);
      if (belongs(before, word)) {
        all.set(all.size() - 1, before + " " + word);
      } else {
        all.add(word);
      }
    }
    return all;
  }

  private static boolean belongs(String before, String word) {
    // What cannot end in a number is told by its last letter: the pattern looks at all of it.
    return endsLikeNumber(before)
        && NUMBER.matcher(before).matches()
        && (UNIT.matcher(word).matches()
            || FRACTION.matcher(word).matches()
            || (before.endsWith("′") && INCHES.matcher(word).matches()));
  }

  private static boolean endsLikeNumber(String words) {
    char last = words.isEmpty() ? ' ' : words.charAt(words.length() - 1);
    return (last >= '0' && last <= '9') || last == '′' || last == 'q' || last == 'l';
  }

  private void add(String word) {
    String longer = line.isEmpty() ? word : line + " " + word;
    if (fits(longer)) {
      line = longer;
      return;
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    line = word;
    while (!fits(line)) {
      int end = headEnd(line);
      lines.add(line.substring(0, end));
      line = line.substring(end);
    }
  }

  /** The end of the longest head that fits; one character at least, so that the cut moves on. */
  private int headEnd(String word) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length() && fits(word.substring(0, word.offsetByCodePoints(end, 1)))) {
      end = word.offsetByCodePoints(end, 1);
    }
    return end;
  }

  private boolean fits(String words) {
    return words.codePointCount(0, words.length()) <= 1
        || TextMeasure.width(words, style) <= width + 1e-9;
  }
}
