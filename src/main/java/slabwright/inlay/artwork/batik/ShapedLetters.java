package slabwright.inlay.artwork.batik;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.text.Bidi;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

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
  private final boolean[] other;
  private final boolean plain;
  private final boolean unjoined;

  private ShapedLetters(int[] codes, double[] advances, GlyphVector apart, boolean joined) {
    this.codes = codes;
    this.advances = advances;
    other = new boolean[codes.length];
    unjoined = !joined && separate(apart);
    boolean same = true;
    for (int i = 0; i < codes.length; i++) {
      other[i] = codes[i] != apart.getGlyphCode(i);
      same &= !other[i] && Math.abs(advances[i] - advance(apart, i)) <= LEVEL;
    }
    plain = same;
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
        advances[last] += advance(set, g);
      }
    }
    return Optional.of(new ShapedLetters(codes, advances, apart, joined));
  }

  /** Letters that stand apart don't change beside others either, which can't be asked for. */
  private boolean separate(GlyphVector apart) {
    boolean any = false;
    for (int i = 0; i < codes.length; i++) {
      if (codes[i] != apart.getGlyphCode(i)) {
        codes[i] = apart.getGlyphCode(i);
        advances[i] = advance(apart, i);
        any = true;
      }
    }
    return any;
  }

  private static double advance(GlyphVector v, int i) {
    return v.getGlyphPosition(i + 1).getX() - v.getGlyphPosition(i).getX();
  }

  /** Whether every character has its own plain shape and advance. */
  boolean isPlain() {
    return plain;
  }

  /** Whether letters that the font joins or changes had to be taken apart, so kerning is lost. */
  boolean isUnjoined() {
    return unjoined;
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
