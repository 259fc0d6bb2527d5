package slabwright.inlay;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.inlay.artwork.picture.PictureArtworkReader;
import slabwright.inlay.artwork.picture.PictureFormat;
import slabwright.inlay.artwork.picture.TraceSettings;
import slabwright.site.GraphicSource;
import slabwright.site.StencilSpec;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * From an SVG file or a picture and the person's choice of colours to the colours that are dyed.
 */
public final class GraphicReader {
  private GraphicReader() {}

  /** The artwork, and its dyed colours in laying order. */
  public record Reading(Artwork artwork, DyedGraphic graphic) {}

  /**
   * Reads a graphic at the width of what it paints, in mm.
   *
   * @param tracing for a picture; a drawing has no use of it
   * @throws IOException when the file is there and breaks while it is read
   */
  public static Result<Reading> read(
      Path file, double width, StencilSpec spec, TraceSettings tracing) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Result.refused(Message.of("inlay.graphic-reader.not-there", file.toString()));
    }
    ArtworkOptions options = DyedGraphic.options(width, spec);
    ArtworkResult result =
        isPicture(file)
            ? PictureArtworkReader.read(file, options, tracing)
            : SvgArtworkReader.read(file, options);
    if (result instanceof ArtworkRefusal refusal) {
      return Result.refused(refusal.message());
    }
    Artwork artwork = (Artwork) result;
    DyedGraphic graphic = DyedGraphic.of(artwork, spec);
    return graphic.layers().isEmpty()
        ? Result.refused(
            Message.of("inlay.graphic-reader.no-colour-dyed", artwork.name(), names(artwork)))
        : Result.ok(new Reading(artwork, graphic));
  }

  /** Whether a graphic is a picture that would be traced, whatever its ending says. */
  public static boolean isPicture(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return PictureFormat.of(in.readNBytes(PictureFormat.FIRST_BYTES)).isPresent();
    }
  }

  /** How a picture was traced that an inlay comes from. */
  public static TraceSettings tracing(GraphicSource source) {
    return source
        .picture()
        .map(
            t ->
                new TraceSettings(
                    OptionalInt.of(t.colours()),
                    OptionalDouble.of(t.speck().mm()),
                    t.roundness(),
                    Optional.of(t.background()),
                    List.of()))
        .orElse(TraceSettings.TOLD);
  }

  private static String names(Artwork artwork) {
    return artwork.colours().stream().map(ColourRegion::hex).collect(Collectors.joining(", "));
  }
}
