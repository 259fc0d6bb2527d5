package slabwright.drawing.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;
import slabwright.drawing.FontFace;
import slabwright.drawing.GlyphAdvances;

/** Outlines of words in thousandths of the em, y up, from the bundled faces. */
final class GlyphPaths {
  private final Map<FontFace, TrueTypeFont> fonts = new EnumMap<>(FontFace.class);

  Path2D of(FontFace face, String words) {
    Path2D all = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double x = 0;
    for (int c : words.codePoints().toArray()) {
      all.append(glyph(face, c, x), false);
      x += GlyphAdvances.of(face).of(c);
    }
    return all;
  }

  private Path2D glyph(FontFace face, int character, double x) {
    TrueTypeFont font = fonts.computeIfAbsent(face, FontFace::read);
    try {
      GlyphData glyph = font.getGlyph().getGlyph(font.getUnicodeCmapLookup().getGlyphId(character));
      Path2D path = new Path2D.Double();
      if (glyph != null) {
        double k = 1000.0 / font.getUnitsPerEm();
        AffineTransform set = AffineTransform.getTranslateInstance(x, 0);
        set.scale(k, k);
        path.append(glyph.getPath().getPathIterator(set), false);
      }
      return path;
    } catch (IOException e) {
      throw new UncheckedIOException("the bundled font cannot be drawn", e);
    }
  }
}
