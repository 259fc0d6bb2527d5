package slabwright.inlay.artwork.batik;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.text.Bidi;
import java.text.CharacterIterator;
import java.util.Map;
import org.apache.batik.gvt.font.AWTGVTFont;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.font.GVTGlyphVector;
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator;

/**
 * A font whose outlines come at 2048 units to the em. The SVG library lays every font out at 48
 * units, where outlines are rounded to 1/3072 of the em: 0.2 mm on letters half a metre high.
 */
final class HighResolutionFont extends Font {
  private static final long serialVersionUID = 1;
  private static final float UNITS = 2048;

  private HighResolutionFont(Font font) {
    super(font);
  }

  /** Whatever size is asked for, the fine one is given; the caller scales by what it got. */
  @Override
  public Font deriveFont(float size) {
    return super.deriveFont(UNITS);
  }

  /** The font at a size in user units, with fine outlines. */
  static GVTFont at(Font font, float size) {
    return new Fine(font, size);
  }

  /** A font that can draw nothing: it stands in the list where one was asked for in vain. */
  static GVTFont blank(Font font, float size) {
    return new Blank(font, size);
  }

  /** A font of the SVG library that sets letters as near each other as the font says. */
  static class Fine extends AWTGVTFont {
    private final Font plain;
    private final float units;

    Fine(Font plain, float size) {
      super(new HighResolutionFont(plain.deriveFont(size)));
      this.plain = plain;
      units = size;
    }

    @Override
    public GVTFont deriveFont(float other) {
      return at(plain, other);
    }

    boolean canDisplay(int codePoint) {
      return plain.canDisplay(codePoint);
    }

    /** Whether it is an upright font slanted by shearing. */
    boolean isSheared() {
      return plain.getAttributes().get(TextAttribute.POSTURE) instanceof Number n
          && n.floatValue() > 0
          && !FontFamily.isItalic(plain);
    }

    @Override
    public GVTGlyphVector createGlyphVector(FontRenderContext frc, CharacterIterator text) {
      GVTGlyphVector plainly = super.createGlyphVector(frc, text);
      char[] letters = letters(text);
      int before = text.getIndex();
      text.first();
      boolean ownDistance =
          text instanceof AttributedCharacterIterator a
              && a.getAttribute(GVTAttributedCharacterIterator.TextAttribute.KERNING) != null;
      text.setIndex(before);
      if (ownDistance
          || letters.length != plainly.getNumGlyphs()
          || Bidi.requiresBidi(letters, 0, letters.length)) {
        return plainly;
      }
      float[] nearer = kerning(letters);
      return nearer.length == 0
          ? plainly
          : new KernedGlyphVector(
              awtFont.createGlyphVector(frc, new String(letters)),
              this,
              units / UNITS,
              text,
              nearer);
    }

    private static char[] letters(CharacterIterator text) {
      int before = text.getIndex();
      StringBuilder all = new StringBuilder();
      for (char c = text.first(); c != CharacterIterator.DONE; c = text.next()) {
        all.append(c);
      }
      text.setIndex(before);
      return all.toString().toCharArray();
    }

    /**
     * By how much each advance grows before the next letter, in user units; none when by nothing.
     */
    private float[] kerning(char[] letters) {
      FontRenderContext exact = new FontRenderContext(null, true, true);
      Font fine = plain.deriveFont(UNITS);
      Font kerned = fine.deriveFont(Map.of(TextAttribute.KERNING, TextAttribute.KERNING_ON));
      GlyphVector apart = fine.createGlyphVector(exact, letters);
      GlyphVector near =
          kerned.layoutGlyphVector(exact, letters, 0, letters.length, Font.LAYOUT_LEFT_TO_RIGHT);
      if (near.getNumGlyphs() != apart.getNumGlyphs()) {
        return new float[0];
      }
      float[] by = new float[letters.length];
      boolean any = false;
      for (int i = 0; i < letters.length; i++) {
        double one = near.getGlyphPosition(i + 1).getX() - near.getGlyphPosition(i).getX();
        double other = apart.getGlyphPosition(i + 1).getX() - apart.getGlyphPosition(i).getX();
        by[i] = (float) ((one - other) * units / UNITS);
        any |= Math.abs(one - other) > 0.5;
      }
      return any ? by : new float[0];
    }
  }

  private static final class Blank extends Fine {
    Blank(Font plain, float size) {
      super(plain, size);
    }

    @Override
    public boolean canDisplay(char c) {
      return false;
    }

    @Override
    boolean canDisplay(int codePoint) {
      return false;
    }

    @Override
    public int canDisplayUpTo(CharacterIterator text, int start, int limit) {
      return start;
    }
  }
}
