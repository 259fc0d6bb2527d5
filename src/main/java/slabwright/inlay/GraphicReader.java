package slabwright.inlay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.site.ColourChoice;
import slabwright.site.StencilSpec;

/** From an SVG file and the person's choice of colours to the colours that are dyed. */
public final class GraphicReader {
  private GraphicReader() {}

  /** A graphic that was read, or one sentence that says why not. */
  public sealed interface Reading {
    /** The artwork, and its dyed colours in laying order. */
    record Read(Artwork artwork, Graphic graphic) implements Reading {}

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
    ArtworkOptions options =
        ArtworkOptions.ofWidth(width)
            .withMergeDeltaE(spec.mergeDeltaE())
            .ignoring(colours(spec, ColourChoice.Use.IGNORE));
    ArtworkResult result = Artwork.read(svg, options);
    if (result instanceof ArtworkRefusal refusal) {
      return new Reading.Refused(refusal.sentence());
    }
    Artwork artwork = (Artwork) result;
    List<DyeLayer> layers = layers(artwork, spec);
    return layers.isEmpty()
        ? new Reading.Refused(
            artwork.name() + ": none of its colours is dyed; choose among " + names(artwork) + ".")
        : new Reading.Read(artwork, new Graphic(artwork.painted(), layers));
  }

  private static Set<String> colours(StencilSpec spec, ColourChoice.Use use) {
    return spec.colours().stream()
        .filter(c -> c.use() == use)
        .map(ColourChoice::colour)
        .collect(Collectors.toSet());
  }

  private static String names(Artwork artwork) {
    return artwork.colours().stream().map(ColourRegion::hex).collect(Collectors.joining(", "));
  }

  /** Dyes in the order chosen; without a choice every colour, the lightest first. */
  private static List<DyeLayer> layers(Artwork artwork, StencilSpec spec) {
    if (spec.colours().stream().noneMatch(c -> c.use() == ColourChoice.Use.DYE)) {
      Set<String> left = colours(spec, ColourChoice.Use.LEAVE);
      return DyeLayer.lightestFirst(
          artwork.colours().stream()
              .filter(c -> !left.contains(c.hex()))
              .map(GraphicReader::layer)
              .toList());
    }
    List<DyeLayer> layers = new ArrayList<>();
    for (ColourChoice choice : spec.colours()) {
      if (choice.use() == ColourChoice.Use.DYE) {
        artwork.colours().stream()
            .filter(c -> c.hex().equals(choice.colour()))
            .map(GraphicReader::layer)
            .forEach(layers::add);
      }
    }
    return layers;
  }

  private static DyeLayer layer(ColourRegion c) {
    return new DyeLayer(c.hex(), c.lightness(), c.region());
  }
}
