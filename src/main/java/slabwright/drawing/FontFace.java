package slabwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The two bundled font faces. They come with the program, so no system font is ever needed. */
public enum FontFace {
  REGULAR("/fonts/DejaVuSans.ttf", "normal"),
  BOLD("/fonts/DejaVuSans-Bold.ttf", "bold");

  /** The family name that SVG files and the desk ask for. */
  public static final String FAMILY = "DejaVu Sans";

  private final String resource;
  private final String weight;

  FontFace(String resource, String weight) {
    this.resource = resource;
    this.weight = weight;
  }

  public static FontFace of(TextStyle style) {
    return style.bold() ? BOLD : REGULAR;
  }

  /** The CSS font weight. */
  public String weight() {
    return weight;
  }

  /** The TrueType file; the caller closes it. */
  public InputStream open() {
    InputStream in = FontFace.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException("the bundled font " + resource + " is missing");
    }
    return in;
  }

  /** The font, read afresh; the caller closes it. */
  public TrueTypeFont read() {
    try (InputStream in = open()) {
      return new TTFParser().parse(new RandomAccessReadBuffer(in));
    } catch (IOException e) {
      throw new UncheckedIOException("the bundled font " + resource + " cannot be read", e);
    }
  }
}
