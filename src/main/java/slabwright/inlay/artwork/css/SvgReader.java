package slabwright.inlay.artwork.css;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.ext.DefaultHandler2;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.units.Message;

/**
 * Reads SVG text into elements, taking nothing on trust: no entity may be declared but a short
 * constant, nothing outside the file is fetched, and depth and count are limited while reading.
 * Elements of other namespaces (editors' private notes) are dropped.
 */
public final class SvgReader extends DefaultHandler2 {
  static final int MAX_DEPTH = 256;
  static final int MAX_ELEMENTS = 200_000;
  private static final int LONGEST_CONSTANT = 1000;
  private static final long MOST_TEXT = 64L << 20;
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  private final Deque<SvgElement> open = new ArrayDeque<>();
  private SvgElement root;
  private int foreignDepth;
  private int depth;
  private int count;
  private long text;
  private boolean plainNames;

  private SvgReader() {}

  /** The root element, or a {@link RefusedArtworkException}. */
  public static SvgElement read(byte[] bytes) {
    SvgReader handler = new SvgReader();
    try {
      XMLReader reader = hardened(handler);
      reader.parse(new InputSource(new ByteArrayInputStream(bytes)));
    } catch (SAXParseException e) {
      throw new RefusedArtworkException(
          Reason.NOT_XML,
          Message.of("inlay.svg-reader.not-well-formed", e.getLineNumber(), e.getColumnNumber()));
    } catch (SAXException | IOException e) {
      throw new RefusedArtworkException(Reason.NOT_XML, Message.of("inlay.svg-reader.not-text"));
    }
    return handler.root;
  }

  private static XMLReader hardened(SvgReader handler) throws SAXException {
    SAXParserFactory factory = SAXParserFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setValidating(false);
    try {
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      XMLReader reader = factory.newSAXParser().getXMLReader();
      reader.setFeature("http://xml.org/sax/features/namespace-prefixes", true);
      reader.setFeature("http://xml.org/sax/features/external-general-entities", false);
      reader.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
      reader.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      reader.setProperty("http://xml.org/sax/properties/declaration-handler", handler);
      reader.setContentHandler(handler);
      reader.setErrorHandler(handler);
      reader.setEntityResolver(handler);
      return reader;
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("this Java has no secure XML parser", e);
    }
  }

  @Override
  public void startElement(String uri, String local, String qName, Attributes attributes) {
    if (++depth > MAX_DEPTH) {
      throw new RefusedArtworkException(
          Reason.TOO_DEEP, Message.of("inlay.svg-reader.too-deep", MAX_DEPTH));
    }
    if (++count > MAX_ELEMENTS) {
      throw tooLarge();
    }
    if (root == null) {
      checkRoot(uri, local);
    }
    if (foreignDepth > 0 || !isSvg(uri)) {
      foreignDepth++;
      return;
    }
    SvgElement element = new SvgElement(local);
    copyAttributes(attributes, element);
    element.attributes.values().forEach(value -> grows(value.length()));
    if (root == null) {
      root = element;
    } else {
      open.element().children.add(element);
    }
    open.push(element);
  }

  private void checkRoot(String uri, String local) {
    // hand-written files often forget the namespace; meaning is still plain
    plainNames = uri.isEmpty();
    if (!local.equals("svg") || !isSvg(uri)) {
      throw new RefusedArtworkException(
          Reason.NOT_SVG, Message.of("inlay.svg-reader.not-svg", local));
    }
  }

  private boolean isSvg(String uri) {
    return uri.equals(SVG) || (plainNames && uri.isEmpty());
  }

  /** Constants that are named again and again let a small file grow. */
  private void grows(int characters) {
    text += characters;
    if (text > MOST_TEXT) {
      throw new RefusedArtworkException(
          Reason.TOO_LARGE, Message.of("inlay.svg-reader.too-much-text"));
    }
  }

  private static RefusedArtworkException tooLarge() {
    return new RefusedArtworkException(
        Reason.TOO_LARGE, Message.of("inlay.svg-reader.too-many-elements", MAX_ELEMENTS));
  }

  private static void copyAttributes(Attributes from, SvgElement to) {
    for (int i = 0; i < from.getLength(); i++) {
      String uri = from.getURI(i);
      String local = from.getLocalName(i);
      if (uri.isEmpty()) {
        if (!from.getQName(i).startsWith("xmlns")) {
          to.attributes.put(local, from.getValue(i));
        }
      } else if (uri.equals(XLINK)) {
        to.attributes.put("xlink:" + local, from.getValue(i));
      } else if (uri.equals(XMLConstants.XML_NS_URI)) {
        to.attributes.put("xml:" + local, from.getValue(i));
      }
    }
  }

  @Override
  public void endElement(String uri, String local, String qName) {
    depth--;
    if (foreignDepth > 0) {
      foreignDepth--;
    } else {
      open.pop();
    }
  }

  @Override
  public void characters(char[] chars, int start, int length) {
    grows(length);
    if (foreignDepth == 0 && !open.isEmpty()) {
      open.element().children.add(new SvgText(new String(chars, start, length)));
    }
  }

  @Override
  public void processingInstruction(String target, String data) {
    if (target.equals("xml-stylesheet")) {
      throw new RefusedArtworkException(
          Reason.EXTERNAL_RESOURCE, Message.of("inlay.svg-reader.style-sheet-outside"));
    }
  }

  @Override
  public void internalEntityDecl(String name, String value) {
    // a constant such as a colour or a namespace; anything more could grow without end
    boolean constant =
        !name.startsWith("%")
            && value.length() <= LONGEST_CONSTANT
            && value.indexOf('<') < 0
            && value.indexOf('&') < 0;
    if (!constant) {
      throw entity(name);
    }
  }

  @Override
  public void externalEntityDecl(String name, String publicId, String systemId) {
    throw entity(name);
  }

  private static RefusedArtworkException entity(String name) {
    return new RefusedArtworkException(
        Reason.ENTITY_DECLARED, Message.of("inlay.svg-reader.entity-declared", name));
  }

  @Override
  public InputSource resolveEntity(String name, String publicId, String base, String systemId) {
    return new InputSource(new StringReader(""));
  }

  @Override
  public void error(SAXParseException e) {
    // validity is of no interest here, only well-formedness
  }

  @Override
  public void fatalError(SAXParseException e) throws SAXParseException {
    throw e;
  }
}
