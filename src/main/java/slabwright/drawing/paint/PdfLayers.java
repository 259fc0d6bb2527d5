package slabwright.drawing.paint;

import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** The layers of one PDF, each made once and shared by all pages. */
final class PdfLayers {
  private final PDDocument document;
  private final Map<String, PDOptionalContentGroup> made = new HashMap<>();

  PdfLayers(PDDocument document) {
    this.document = document;
  }

  PDOptionalContentGroup of(String name) {
    return made.computeIfAbsent(name, this::add);
  }

  private PDOptionalContentGroup add(String name) {
    PDOptionalContentProperties all = document.getDocumentCatalog().getOCProperties();
    if (all == null) {
      all = new PDOptionalContentProperties();
      document.getDocumentCatalog().setOCProperties(all);
    }
    PDOptionalContentGroup group = new PDOptionalContentGroup(name);
    all.addGroup(group);
    return group;
  }
}
