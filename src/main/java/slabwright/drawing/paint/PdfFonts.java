package slabwright.drawing.paint;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import slabwright.drawing.FontFace;

/** The faces of one PDF, each embedded once as a subset when first used. */
final class PdfFonts {
  private final PDDocument document;
  private final Map<FontFace, PDFont> loaded = new EnumMap<>(FontFace.class);

  PdfFonts(PDDocument document) {
    this.document = document;
  }

  PDFont of(FontFace face) throws IOException {
    PDFont font = loaded.get(face);
    if (font == null) {
      TrueTypeFont read = face.read();
      document.registerTrueTypeFontForClosing(read);
      read.setEnableGsub(false); // see Ligatures
      font = PDType0Font.load(document, read, true);
      loaded.put(face, font);
    }
    return font;
  }
}
