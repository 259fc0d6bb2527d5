package slabwright.inlay.artwork.batik;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import java.util.Optional;
import java.util.function.Function;
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

    /** Whether it is a font made bold by thickening its strokes. */
    boolean isThickened() {
      return plain.isBold() && !FontFamily.isBold(plain);
    }

    /** Whether it gives the same letters in the same size. */
    boolean isSameAs(Fine other) {
      return units == other.units && plain.equals(other.plain);
    }

    /** Whether this text is set as the font asks. */
    boolean canSet(CharacterIterator text) {
      return shaped(text).filter(s -> !s.isUnjoined()).isPresent();
    }

    /** Whether this text begins within a joined letter that is painted otherwise. */
    boolean isTorn(CharacterIterator text) {
      return shaped(text).filter(ShapedLetters::isTorn).isPresent();
    }

    private Optional<ShapedLetters> shaped(CharacterIterator text) {
      if (text instanceof AttributedCharacterIterator a) {
        return RunningText.part(a, () -> shaped(letters(text), key -> asked(a, key)));
      }
      return shaped(letters(text), key -> null);
    }

    /**
     * Letters as this font shapes them.
     *
     * @param asked what the text asks for, by attribute; null where it asks for nothing
     */
    Optional<ShapedLetters> shaped(
        char[] letters, Function<AttributedCharacterIterator.Attribute, Object> asked) {
      boolean kerned =
          distance(asked.apply(GVTAttributedCharacterIterator.TextAttribute.KERNING)).isEmpty();
      boolean spread =
          distance(asked.apply(GVTAttributedCharacterIterator.TextAttribute.LETTER_SPACING))
              .filter(s -> s != 0)
              .isPresent();
      return ShapedLetters.of(plain.deriveFont(UNITS), letters, kerned, !spread);
    }

    @Override
    public GVTGlyphVector createGlyphVector(FontRenderContext frc, CharacterIterator text) {
      return shaped(text)
          .filter(s -> !s.isPlain())
          .<GVTGlyphVector>map(
              s ->
                  new KernedGlyphVector(
                      awtFont.createGlyphVector(frc, s.codes()), this, units / UNITS, text, s))
          .orElseGet(() -> super.createGlyphVector(frc, text));
    }

    private static Object asked(
        AttributedCharacterIterator text, AttributedCharacterIterator.Attribute which) {
      int before = text.getIndex();
      text.first();
      Object value = text.getAttribute(which);
      text.setIndex(before);
      return value;
    }

    /** A distance of its own that the text asks for. */
    private static Optional<Float> distance(Object value) {
      return value instanceof Float f && !f.isNaN() ? Optional.of(f) : Optional.empty();
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
