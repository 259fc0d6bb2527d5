package slabwright.inlay.artwork.batik;

import java.awt.Shape;
import java.awt.font.GlyphMetrics;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.text.CharacterIterator;
import org.apache.batik.gvt.font.AWTGVTFont;
import org.apache.batik.gvt.font.AWTGVTGlyphVector;
import org.apache.batik.gvt.font.GVTGlyphMetrics;
import org.apache.batik.gvt.font.GVTLineMetrics;

/**
 * Letters whose advances take the font's pair kerning in and whose shapes may be joined ones; the
 * SVG library places them by these.
 */
final class KernedGlyphVector extends AWTGVTGlyphVector {
  private final GlyphVector letters;
  private final double scale;
  private final ShapedLetters shaped;
  private final float high;

  /**
   * Letters as the font shapes them.
   *
   * @param letters one for each character, by the codes of {@code shaped}
   * @param scale user units in one unit of {@code letters}
   */
  KernedGlyphVector(
      GlyphVector letters,
      AWTGVTFont font,
      double scale,
      CharacterIterator text,
      ShapedLetters shaped) {
    super(letters, font, scale, text);
    this.letters = letters;
    this.scale = scale;
    this.shaped = shaped;
    GVTLineMetrics line = font.getLineMetrics("By", letters.getFontRenderContext());
    high = line.getAscent() + line.getDescent();
  }

  @Override
  public GVTGlyphMetrics getGlyphMetrics(int i) {
    float advance = (float) (shaped.advance(i) * scale);
    if (!shaped.isOther(i)) {
      GVTGlyphMetrics plain = super.getGlyphMetrics(i);
      return new GVTGlyphMetrics(
          advance, plain.getVerticalAdvance(), plain.getBounds2D(), GlyphMetrics.STANDARD);
    }
    Rectangle2D box =
        AffineTransform.getScaleInstance(scale, scale)
            .createTransformedShape(atOrigin(i))
            .getBounds2D();
    return new GVTGlyphMetrics(advance, high, box, GlyphMetrics.STANDARD);
  }

  /**
   * The library remembers outlines by character, so that of another shape never goes through it.
   */
  @Override
  public Shape getGlyphOutline(int i) {
    if (!shaped.isOther(i)) {
      return super.getGlyphOutline(i);
    }
    Point2D at = getGlyphPosition(i);
    AffineTransform place = AffineTransform.getTranslateInstance(at.getX(), at.getY());
    AffineTransform own = getGlyphTransform(i);
    if (own != null) {
      place.concatenate(own);
    }
    place.scale(scale, scale);
    return place.createTransformedShape(atOrigin(i));
  }

  @Override
  public Shape getGlyphVisualBounds(int i) {
    return shaped.isOther(i) ? getGlyphOutline(i).getBounds2D() : super.getGlyphVisualBounds(i);
  }

  private Shape atOrigin(int i) {
    Point2D at = letters.getGlyphPosition(i);
    return AffineTransform.getTranslateInstance(-at.getX(), -at.getY())
        .createTransformedShape(letters.getGlyphOutline(i));
  }
}
