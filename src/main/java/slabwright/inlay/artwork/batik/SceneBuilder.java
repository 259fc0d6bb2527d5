package slabwright.inlay.artwork.batik;

import java.text.AttributedCharacterIterator;
import java.text.AttributedCharacterIterator.Attribute;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.StrokingTextPainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.parser.ParseException;
import org.w3c.dom.DOMException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import slabwright.inlay.artwork.ArtworkPage;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.inlay.artwork.css.SvgElement;
import slabwright.inlay.artwork.css.SvgNode;
import slabwright.inlay.artwork.css.SvgText;
import slabwright.units.Message;

/** Hands checked elements to the SVG library and takes back its tree of things to paint. */
final class SceneBuilder {
  private static final int MOST_LEFT_OUT = 30;
  private static final String XLINK = "http://www.w3.org/1999/xlink";
  private static final String XML = "http://www.w3.org/XML/1998/namespace";

  /** Lays text out with our fonts, also where the library would ask its own. */
  private static final class TextPainter extends StrokingTextPainter {
    private final FontResolver fonts;

    TextPainter(FontResolver fonts) {
      this.fonts = fonts;
    }

    @Override
    protected FontFamilyResolver getFontFamilyResolver() {
      return fonts;
    }

    @Override
    protected AttributedCharacterIterator createModifiedACIForFontMatching(
        AttributedCharacterIterator line) {
      // the library's set has no type parameter
      Set<Attribute> borders = new HashSet<>();
      for (Object border : getTextRunBoundaryAttributes()) {
        borders.add((Attribute) border);
      }
      return RunningText.shapedOverBorders(super.createModifiedACIForFontMatching(line), borders);
    }
  }

  /** Clips our way; the library registers its own ways only once it has the document. */
  private static final class Context extends BridgeContext {
    Context(SceneUserAgent agent) {
      super(agent);
    }

    @Override
    public void registerSVGBridges() {
      super.registerSVGBridges();
      putBridge(new ClipBridge());
      putBridge(new PatternBridge());
      putBridge(new MaskBridge());
    }
  }

  private SceneBuilder() {}

  /**
   * The tree to paint, in the page's pixels, or a {@link RefusedArtworkException}. What the library
   * stops at is left out with a note, and all is built again.
   */
  public static GraphicsNode build(
      SvgElement root, ArtworkPage page, FontResolver fonts, WarningCollector notes) {
    for (int left = MOST_LEFT_OUT; ; left--) {
      IdentityHashMap<Element, SvgElement> origins = new IdentityHashMap<>();
      try {
        return built(document(root, origins), page, fonts, notes);
      } catch (BridgeException e) {
        SvgElement culprit = origins.get(e.getElement());
        if (left == 0 || culprit == null || !culprit.takeOutOf(root)) {
          throw notUnderstood();
        }
        notes.add(
            Kind.PART_LEFT_OUT,
            Message.of("inlay.scene-builder.part-left-out", culprit.name, culprit.get("id")));
      } catch (DOMException | ParseException e) {
        throw notUnderstood();
      }
    }
  }

  private static RefusedArtworkException notUnderstood() {
    return new RefusedArtworkException(
        Reason.NOT_UNDERSTOOD, Message.of("inlay.scene-builder.not-understood"));
  }

  private static GraphicsNode built(
      Document document, ArtworkPage page, FontResolver fonts, WarningCollector notes) {
    BridgeContext context = new Context(new SceneUserAgent(page, fonts, notes));
    context.setDynamicState(BridgeContext.STATIC);
    context.setTextPainter(new TextPainter(fonts));
    try {
      GraphicsNode node = new GVTBuilder().build(context, document);
      if (node == null) {
        throw RefusedArtworkException.nothingPainted();
      }
      return node;
    } catch (StackOverflowError e) {
      // depth and copies are bounded before, but style rules can still tie paints into a ring
      throw new RefusedArtworkException(
          Reason.USE_LOOP, Message.of("inlay.scene-builder.ring-of-paints"));
    } finally {
      context.dispose();
    }
  }

  private static Document document(SvgElement root, IdentityHashMap<Element, SvgElement> origins) {
    SVGOMDocument document =
        (SVGOMDocument)
            SVGDOMImplementation.getDOMImplementation()
                .createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
    document.setDocumentURI("graphic:inside");
    fill(document, document.getDocumentElement(), root, origins);
    return document;
  }

  private static void fill(
      Document document,
      Element to,
      SvgElement from,
      IdentityHashMap<Element, SvgElement> origins) {
    origins.put(to, from);
    from.attributes.forEach((name, value) -> to.setAttributeNS(namespace(name), name, value));
    for (SvgNode child : from.children) {
      to.appendChild(node(document, child, origins));
    }
  }

  private static Node node(
      Document document, SvgNode child, IdentityHashMap<Element, SvgElement> origins) {
    if (child instanceof SvgText t) {
      return document.createTextNode(t.text());
    }
    SvgElement e = (SvgElement) child;
    Element made = document.createElementNS(SVGDOMImplementation.SVG_NAMESPACE_URI, e.name);
    fill(document, made, e, origins);
    return made;
  }

  private static String namespace(String attribute) {
    if (attribute.startsWith("xlink:")) {
      return XLINK;
    }
    return attribute.startsWith("xml:") ? XML : null;
  }
}
