package slabwright.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** How far each character of a face moves the pen, in thousandths of the em. Immutable. */
public final class GlyphAdvances {
  private static final int CHARACTERS = 0x20000;
  private static final GlyphAdvances REGULAR = read(FontFace.REGULAR);
  private static final GlyphAdvances BOLD = read(FontFace.BOLD);

  private final float[] advance;

  private GlyphAdvances(float[] advance) {
    this.advance = advance;
  }

  public static GlyphAdvances of(FontFace face) {
    return switch (face) {
      case REGULAR -> REGULAR;
      case BOLD -> BOLD;
    };
  }

  boolean shows(int character) {
    return character < CHARACTERS && advance[character] >= 0;
  }

  public float of(int character) {
    return advance[character];
  }

  private static GlyphAdvances read(FontFace face) {
    float[] advance = new float[CHARACTERS];
    Arrays.fill(advance, -1);
    try (TrueTypeFont font = face.read()) {
      CmapLookup glyphs = font.getUnicodeCmapLookup();
      float unit = 1000f / font.getUnitsPerEm();
      for (int c = ' '; c < CHARACTERS; c++) {
        int glyph = glyphs.getGlyphId(c);
        if (glyph != 0) {
          advance[c] = font.getAdvanceWidth(glyph) * unit;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the bundled font cannot be measured", e);
    }
    return new GlyphAdvances(advance);
  }
}
