package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Breaks one paragraph into lines of a width, at spaces where it can. */
final class TextWrap {
  private final TextStyle style;
  private final double width;
  private final List<String> lines = new ArrayList<>();
  private String line = "";

  TextWrap(TextStyle style, double width) {
    this.style = style;
    this.width = width;
  }

  List<String> lines(String paragraph) {
    for (String word : paragraph.split(" +", -1)) {
      add(word);
    }
    lines.add(line);
    return lines;
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
