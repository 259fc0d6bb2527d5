package slabwright.inlay.artwork.batik;

import java.awt.font.GlyphMetrics;
import java.awt.font.GlyphVector;
import java.text.CharacterIterator;
import org.apache.batik.gvt.font.AWTGVTFont;
import org.apache.batik.gvt.font.AWTGVTGlyphVector;
import org.apache.batik.gvt.font.GVTGlyphMetrics;

/** Letters whose advances take the font's pair kerning in; the SVG library places them by these. */
final class KernedGlyphVector extends AWTGVTGlyphVector {
  private final float[] nearer;

  /**
   * Letters with kerning.
   *
   * @param scale user units in one unit of {@code letters}
   * @param nearer what each advance grows by, in user units; mostly less than nothing
   */
  KernedGlyphVector(
      GlyphVector letters, AWTGVTFont font, double scale, CharacterIterator text, float[] nearer) {
    super(letters, font, scale, text);
    this.nearer = nearer;
  }

  @Override
  public GVTGlyphMetrics getGlyphMetrics(int i) {
    GVTGlyphMetrics plain = super.getGlyphMetrics(i);
    return new GVTGlyphMetrics(
        plain.getHorizontalAdvance() + nearer[i],
        plain.getVerticalAdvance(),
        plain.getBounds2D(),
        GlyphMetrics.STANDARD);
  }
}
