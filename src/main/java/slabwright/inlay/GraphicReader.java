package slabwright.inlay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.site.StencilSpec;

/** From an SVG file and the person's choice of colours to the colours that are dyed. */
public final class GraphicReader {
  private GraphicReader() {}

  /** A graphic that was read, or one sentence that says why not. */
  public sealed interface Reading {
    /** The artwork, and its dyed colours in laying order. */
    record Read(Artwork artwork, DyedGraphic graphic) implements Reading {}

    /** Why it can't be used. */
    record Refused(String sentence) implements Reading {}
  }

  /**
   * Reads a graphic at the width of what it paints, in mm.
   *
   * @throws IOException when the file is there and breaks while it is read
   */
  public static Reading read(Path svg, double width, StencilSpec spec) throws IOException {
    if (!Files.isRegularFile(svg)) {
      return new Reading.Refused("There is no graphic " + svg + "; check the path.");
    }
    ArtworkResult result = SvgArtworkReader.read(svg, DyedGraphic.options(width, spec));
    if (result instanceof ArtworkRefusal refusal) {
      return new Reading.Refused(refusal.sentence());
    }
    Artwork artwork = (Artwork) result;
    DyedGraphic graphic = DyedGraphic.of(artwork, spec);
    return graphic.layers().isEmpty()
        ? new Reading.Refused(
            artwork.name() + ": none of its colours is dyed; choose among " + names(artwork) + ".")
        : new Reading.Read(artwork, graphic);
  }

  private static String names(Artwork artwork) {
    return artwork.colours().stream().map(ColourRegion::hex).collect(Collectors.joining(", "));
  }
}
