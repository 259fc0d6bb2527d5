package slabwright.inlay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.site.StencilSpec;
import slabwright.units.Message;
import slabwright.units.Result;

/** From a graphic's file and the person's choice of colours to the colours that are dyed. */
public final class GraphicReader {
  private GraphicReader() {}

  /** The artwork, and its dyed colours in laying order. */
  public record Reading(Artwork artwork, DyedGraphic graphic) {}

  /**
   * Reads a graphic at the width of what it paints, in mm.
   *
   * @param how its file is read
   * @throws IOException when the file is there and breaks while it is read
   */
  public static Result<Reading> read(Path file, double width, StencilSpec spec, GraphicSettings how)
      throws IOException {
    if (!Files.isRegularFile(file)) {
      return Result.refused(Message.of("inlay.graphic-reader.not-there", file.toString()));
    }
    ArtworkResult result = GraphicFile.read(file, DyedGraphic.options(width, spec), how);
    if (result instanceof ArtworkRefusal refusal) {
      return Result.refused(refusal.message());
    }
    Artwork artwork = (Artwork) result;
    DyedGraphic graphic = DyedGraphic.of(artwork, spec);
    if (graphic.layers().isEmpty()) {
      return Result.refused(
          Message.of("inlay.graphic-reader.no-colour-dyed", artwork.name(), names(artwork)));
    }
    return GraphicBudget.tooMuch(graphic)
        .map(why -> Message.of("inlay.artwork.refused", artwork.name(), why))
        .map(Result::<Reading>refused)
        .orElseGet(() -> Result.ok(new Reading(artwork, graphic)));
  }

  private static String names(Artwork artwork) {
    return artwork.colours().stream().map(ColourRegion::hex).collect(Collectors.joining(", "));
  }
}
