package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Widths of words in millimetres, from the bundled font's own tables, so that layout is the same on
 * every machine and in every output. No kerning, as in the outputs.
 */
public final class TextMeasure {
  /** Height of capitals and figures as a share of the em (DejaVu Sans: 1493 of 2048 units). */
  public static final double CAP_HEIGHT = 1493 / 2048.0;

  /** How far letters such as g reach below the baseline, as a share of the em. */
  public static final double DESCENT = 0.236;

  /** How far accents reach above the baseline, as a share of the em. */
  public static final double ASCENT = 0.928;

  private static final int MISSING = 0x25A1;

  private TextMeasure() {}

  /** The advance width of the words in the style, in the style's own millimetres. */
  public static double width(String words, TextStyle style) {
    GlyphAdvances face = GlyphAdvances.of(FontFace.of(style));
    // A loop, as every line that is broken asks for many widths.
    double sum = 0;
    int c;
    for (int i = 0; i < words.length(); i += Character.charCount(c)) {
      c = words.codePointAt(i);
      sum += face.of(shown(c));
    }
    return sum * style.size() / 1000;
  }

  /** The words with an open square for what the font cannot show and a space for controls. */
  public static String showable(String words) {
    StringBuilder shown = new StringBuilder(words.length());
    int c;
    for (int i = 0; i < words.length(); i += Character.charCount(c)) {
      c = words.codePointAt(i);
      shown.appendCodePoint(shown(c));
    }
    return shown.toString();
  }

  private static int shown(int c) {
    if (c >= ' ' && c <= '~') {
      return c; // both faces have these
    }
    int set = Character.isWhitespace(c) || Character.isISOControl(c) ? ' ' : c;
    boolean there =
        GlyphAdvances.of(FontFace.REGULAR).shows(set) && GlyphAdvances.of(FontFace.BOLD).shows(set);
    return there ? set : MISSING;
  }

  /** The words broken into lines no wider than {@code width}; a word longer than that is cut. */
  public static List<String> wrap(String words, TextStyle style, double width) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : words.split("\n", -1)) {
      lines.addAll(new TextWrap(style, width).lines(showable(paragraph)));
    }
    return lines;
  }

  /** The pieces that a line is broken between: words, and numbers with their units. */
  public static List<String> pieces(String words) {
    return TextWrap.glued(showable(words).split("[\n ]+", -1));
  }

  /** The words, shortened with an ellipsis when they are wider than {@code width}. */
  public static String fitted(String words, TextStyle style, double width) {
    if (width(words, style) <= width) {
      return words;
    }
    int end = words.length();
    while (end > 0 && width(words.substring(0, end).strip() + "…", style) > width) {
      end = words.offsetByCodePoints(end, -1);
    }
    return words.substring(0, end).strip() + "…";
  }

  /** Like {@link #fitted}, but what follows the last comma stays: it tells two steps apart. */
  public static String fittedBeforeComma(String words, TextStyle style, double width) {
    int comma = words.lastIndexOf(", ");
    if (comma < 0 || width(words, style) <= width) {
      return fitted(words, style, width);
    }
    String end = words.substring(comma);
    return fitted(words.substring(0, comma), style, width - width(end, style)) + end;
  }
}
