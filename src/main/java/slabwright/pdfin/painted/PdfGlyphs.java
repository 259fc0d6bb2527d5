package slabwright.pdfin.painted;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Letters as outlines in the page's own frame. */
final class PdfGlyphs {
  private final PdfNotes notes;

  PdfGlyphs(PdfNotes notes) {
    this.notes = notes;
  }

  Path2D.Double outline(Matrix text, PDFont font, int code, Vector displacement)
      throws IOException {
    AffineTransform at = text.createAffineTransform();
    Rectangle2D place = new Rectangle2D.Double(at.getTranslateX(), at.getTranslateY(), 0, 0);
    at.concatenate(font.getFontMatrix().createAffineTransform());
    if (!(font instanceof PDVectorFont letters)) {
      notes.add(PdfNote.Kind.FONT, name(font), place);
      return new Path2D.Double();
    }
    if (!font.isEmbedded()) {
      notes.add(PdfNote.Kind.FONT, name(font), place);
      stretch(at, font, code, displacement);
    } else if (!letters.hasGlyph(code)) {
      notes.add(PdfNote.Kind.CHARACTER, name(font), place);
    }
    return new Path2D.Double(letters.getNormalizedPath(code), at);
  }

  /** A font that stands in for another takes the widths that the file states. */
  private static void stretch(AffineTransform at, PDFont font, int code, Vector displacement)
      throws IOException {
    if (font.isVertical() || font.isStandard14() || !font.hasExplicitWidth(code)) {
      return;
    }
    float drawn = font.getWidthFromFont(code);
    float stated = displacement.getX() * 1000;
    if (stated > 0 && drawn > 0) {
      at.scale(stated / drawn, 1);
    }
  }

  private static String name(PDFont font) {
    String name = font.getName() == null ? "?" : font.getName();
    // a subset's name starts with six letters and a plus sign
    return name.replaceFirst("^[A-Z]{6}\\+", "");
  }
}
