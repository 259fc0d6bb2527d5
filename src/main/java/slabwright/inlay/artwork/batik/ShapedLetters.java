package slabwright.inlay.artwork.batik;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.text.Bidi;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A line of text as its font shapes it: pair kerning, joined letters (ligatures) and letters that
 * change beside others, one shape for each character. The first character of a joined letter has
 * its shape, the others are blank.
 */
final class ShapedLetters {
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
  private static final int NO_GLYPH = 0xFFFE;
  private static final double LEVEL = 0.5;

  private final int[] codes;
  private final double[] advances;

  /** For each character, the first of those that its shape stands for. */
  private final int[] heads;

  private final boolean[] other;
  private final boolean[] moved;
  private final boolean[] separated;
  private final boolean torn;

  private ShapedLetters(
      int[] codes,
      double[] advances,
      int[] heads,
      boolean[] other,
      boolean[] moved,
      boolean[] separated,
      boolean torn) {
    this.codes = codes;
    this.advances = advances;
    this.heads = heads;
    this.other = other;
    this.moved = moved;
    this.separated = separated;
    this.torn = torn;
  }

  /**
   * Shapes a text.
   *
   * @param font at its finest size; advances are in its units
   * @param kerned whether letters stand as near each other as the font says
   * @param joined whether letters may join, as in ffi
   * @return nothing where a character needs several shapes, or shapes over or before each other:
   *     accents by themselves, scripts that run from right to left or whose letters change places
   */
  static Optional<ShapedLetters> of(Font font, char[] text, boolean kerned, boolean joined) {
    GlyphVector apart = font.createGlyphVector(EXACT, text);
    if (Bidi.requiresBidi(text, 0, text.length) || apart.getNumGlyphs() != text.length) {
      return Optional.empty();
    }
    Map<TextAttribute, Object> how = new HashMap<>();
    if (kerned) {
      how.put(TextAttribute.KERNING, TextAttribute.KERNING_ON);
    }
    if (joined) {
      how.put(TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON);
    }
    GlyphVector set =
        font.deriveFont(how)
            .layoutGlyphVector(EXACT, text, 0, text.length, Font.LAYOUT_LEFT_TO_RIGHT);
    int[] codes = new int[text.length];
    double[] advances = new double[text.length];
    int[] heads = new int[text.length];
    Arrays.fill(codes, font.createGlyphVector(EXACT, " ").getGlyphCode(0));
    int last = -1;
    for (int g = 0; g < set.getNumGlyphs(); g++) {
      int at = set.getGlyphCharIndex(g);
      boolean placed = Math.abs(set.getGlyphPosition(g).getY()) <= LEVEL;
      if (set.getGlyphCode(g) < NO_GLYPH) {
        if (at <= last || !placed) {
          return Optional.empty();
        }
        last = at;
        codes[at] = set.getGlyphCode(g);
      }
      if (last >= 0) {
        heads[at] = last;
        advances[last] += advance(set, g);
      }
    }
    for (int i = 1; i < text.length; i++) {
      heads[i] = Math.max(heads[i], heads[i - 1]);
    }
    return Optional.of(compared(codes, advances, heads, apart, joined));
  }

  private static ShapedLetters compared(
      int[] codes, double[] advances, int[] heads, GlyphVector apart, boolean joined) {
    int n = codes.length;
    boolean[] other = new boolean[n];
    boolean[] moved = new boolean[n];
    boolean[] separated = new boolean[n];
    for (int i = 0; i < n; i++) {
      if (!joined && codes[i] != apart.getGlyphCode(i)) {
        // letters that stand apart don't change beside others either, which can't be asked for
        codes[i] = apart.getGlyphCode(i);
        advances[i] = advance(apart, i);
        heads[i] = i;
        separated[i] = true;
      }
      other[i] = codes[i] != apart.getGlyphCode(i);
      moved[i] = Math.abs(advances[i] - advance(apart, i)) > LEVEL;
    }
    return new ShapedLetters(codes, advances, heads, other, moved, separated, false);
  }

  /** Pieces that were shaped each by itself, as one line. */
  static ShapedLetters joined(List<ShapedLetters> pieces) {
    int n = pieces.stream().mapToInt(ShapedLetters::length).sum();
    ShapedLetters all =
        new ShapedLetters(
            new int[n],
            new double[n],
            new int[n],
            new boolean[n],
            new boolean[n],
            new boolean[n],
            false);
    int at = 0;
    for (ShapedLetters p : pieces) {
      System.arraycopy(p.codes, 0, all.codes, at, p.length());
      System.arraycopy(p.advances, 0, all.advances, at, p.length());
      System.arraycopy(p.other, 0, all.other, at, p.length());
      System.arraycopy(p.moved, 0, all.moved, at, p.length());
      System.arraycopy(p.separated, 0, all.separated, at, p.length());
      for (int i = 0; i < p.length(); i++) {
        all.heads[at + i] = at + p.heads[i];
      }
      at += p.length();
    }
    return all;
  }

  /** How many characters. */
  int length() {
    return codes.length;
  }

  private static double advance(GlyphVector v, int i) {
    return v.getGlyphPosition(i + 1).getX() - v.getGlyphPosition(i).getX();
  }

  /** Whether every character has its own plain shape and advance. */
  boolean isPlain() {
    return !any(other) && !any(moved);
  }

  /** Whether letters that the font joins or changes had to be taken apart, so kerning is lost. */
  boolean isUnjoined() {
    return any(separated);
  }

  private static boolean any(boolean[] all) {
    for (boolean one : all) {
      if (one) {
        return true;
      }
    }
    return false;
  }

  /** The first of the characters that a character's shape stands for: itself, or one before it. */
  int head(int i) {
    return heads[i];
  }

  /**
   * The letters of one element.
   *
   * @param torn whether its first letter is joined to one before it that is painted otherwise
   */
  ShapedLetters part(int from, int to, boolean torn) {
    return new ShapedLetters(
        Arrays.copyOfRange(codes, from, to),
        Arrays.copyOfRange(advances, from, to),
        IntStream.range(from, to).map(i -> heads[i] - from).toArray(),
        Arrays.copyOfRange(other, from, to),
        Arrays.copyOfRange(moved, from, to),
        Arrays.copyOfRange(separated, from, to),
        torn);
  }

  /** Whether it begins within a joined letter that is painted otherwise. */
  boolean isTorn() {
    return torn;
  }

  /** The font's numbers of the shapes. */
  int[] codes() {
    return codes.clone();
  }

  /** Whether the shape of a character is another than its plain one. */
  boolean isOther(int i) {
    return other[i];
  }

  /** How far the next character stands from this one, in the font's units. */
  double advance(int i) {
    return advances[i];
  }
}
