package slabwright.bare;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.w3c.dom.svg.SVGDocument;

/**
 * What a program on the same libraries costs that does next to nothing: a virtual machine starts,
 * one SVG file is built by Batik, one PDF page is written. The whole-process figures of
 * docs/measured.md are ratios to it.
 */
public final class BareProgram {
  private BareProgram() {}

  /**
   * Builds the first file and writes the second.
   *
   * @param arguments an SVG file and the PDF file to write
   */
  public static void main(String[] arguments) throws IOException {
    Path svg = Path.of(arguments[0]);
    SVGDocument document =
        new SAXSVGDocumentFactory(null).createSVGDocument(svg.toUri().toString());
    UserAgentAdapter agent = new UserAgentAdapter();
    BridgeContext context = new BridgeContext(agent, new DocumentLoader(agent));
    String size = new GVTBuilder().build(context, document).getBounds().toString();
    Path pdf = Path.of(arguments[1]);
    try (PDDocument pages = new PDDocument()) {
      PDPage page = new PDPage();
      pages.addPage(page);
      try (PDPageContentStream content = new PDPageContentStream(pages, page)) {
        content.beginText();
        content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
        content.newLineAtOffset(72, 700);
        content.showText(size);
        content.endText();
      }
      pages.save(pdf.toFile());
    }
    System.out.println(Files.size(pdf));
  }
}
