package slabwright.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** How far each character of a face moves the pen, in thousandths of the em. Immutable. */
final class Advances {
  private static final int CHARACTERS = 0x20000;
  private static final Advances REGULAR = read(Face.REGULAR);
  private static final Advances BOLD = read(Face.BOLD);

  private final float[] advance;

  private Advances(float[] advance) {
    this.advance = advance;
  }

  static Advances of(Face face) {
    return switch (face) {
      case REGULAR -> REGULAR;
      case BOLD -> BOLD;
    };
  }

  boolean shows(int character) {
    return character < CHARACTERS && advance[character] >= 0;
  }

  float of(int character) {
    return advance[character];
  }

  private static Advances read(Face face) {
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
    return new Advances(advance);
  }
}
