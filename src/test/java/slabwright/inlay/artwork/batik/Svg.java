package slabwright.inlay.artwork.batik;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.words.Words;

/** SVG text into artwork, for tests. */
final class Svg {
  private Svg() {}

  static final String OPEN =
      "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' ";

  /** A page of 100 by 100 px with this inside. */
  static String page(String inside) {
    return OPEN + "width='100' height='100' viewBox='0 0 100 100'>" + inside + "</svg>";
  }

  static ArtworkResult read(String svg, ArtworkOptions options) {
    byte[] bytes = svg.getBytes(StandardCharsets.UTF_8);
    try {
      return SvgArtworkReader.read(
          new ByteArrayInputStream(bytes), "test.svg", options.withShippedFontsOnly());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Artwork art(String svg, double width) {
    ArtworkResult result = read(svg, ArtworkOptions.ofWidth(width));
    if (result instanceof ArtworkRefusal r) {
      throw new AssertionError(Words.english().say(r.message()));
    }
    return (Artwork) result;
  }

  static ArtworkRefusal refusal(String svg) {
    ArtworkResult result = read(svg, ArtworkOptions.ofWidth(1000));
    if (result instanceof ArtworkRefusal r) {
      return r;
    }
    throw new AssertionError("was read: " + result);
  }
}
