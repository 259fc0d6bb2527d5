package slabwright.drawing.paint;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import slabwright.drawing.EncodedPicture;

/** The pictures of one document, each embedded once however often it is shown. */
final class PdfImages {
  private final PDDocument document;
  private final Map<EncodedPicture, PDImageXObject> known = new HashMap<>();

  PdfImages(PDDocument document) {
    this.document = document;
  }

  /** The picture's JPEG as it is: nothing is decoded and pressed again. */
  PDImageXObject of(EncodedPicture picture) throws IOException {
    PDImageXObject there = known.get(picture);
    if (there == null) {
      there = JPEGFactory.createFromStream(document, new ByteArrayInputStream(picture.jpeg()));
      known.put(picture, there);
    }
    return there;
  }
}
