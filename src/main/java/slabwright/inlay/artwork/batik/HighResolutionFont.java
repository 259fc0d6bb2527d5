package slabwright.inlay.artwork.batik;

import java.awt.Font;
import java.text.CharacterIterator;
import org.apache.batik.gvt.font.AWTGVTFont;
import org.apache.batik.gvt.font.GVTFont;

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

  private static class Fine extends AWTGVTFont {
    private final Font plain;

    Fine(Font plain, float size) {
      super(new HighResolutionFont(plain.deriveFont(size)));
      this.plain = plain;
    }

    @Override
    public GVTFont deriveFont(float size) {
      return at(plain, size);
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
    public int canDisplayUpTo(CharacterIterator text, int start, int limit) {
      return start;
    }
  }
}
