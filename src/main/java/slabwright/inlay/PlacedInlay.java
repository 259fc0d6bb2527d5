package slabwright.inlay;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.masking.DyeBook;
import slabwright.site.Inlay;

/** An inlay of the plan with its graphic read and all that follows from where it lies. */
public record PlacedInlay(Inlay inlay, Artwork artwork, InlayPlan plan) {
  /** The inlay computed, or one sentence that says why not. */
  public sealed interface Placing {
    /** Computed. */
    record Done(PlacedInlay placed) implements Placing {}

    /** Not computed. */
    record Refused(Inlay inlay, String sentence) implements Placing {}
  }

  /**
   * Reads the graphic and plans the inlay on its floor.
   *
   * @param graphic the SVG file
   * @param takeoff of the floor area it lies on
   * @param dyes the shop book's figures by colour; may be empty
   * @throws IOException when the file breaks while it is read
   */
  public static Placing of(
      Inlay inlay, Path graphic, FloorTakeoff takeoff, Map<String, DyeBook> dyes)
      throws IOException {
    GraphicReader.Reading reading = GraphicReader.read(graphic, inlay.width().mm(), inlay.spec());
    if (reading instanceof GraphicReader.Reading.Refused refused) {
      return new Placing.Refused(inlay, refused.sentence());
    }
    GraphicReader.Reading.Read read = (GraphicReader.Reading.Read) reading;
    InlayContext context = Surroundings.of(inlay, takeoff).context().withDyes(dyes);
    InlayPlan plan = InlayPlan.of(read.graphic(), inlay.spec(), context);
    return new Placing.Done(new PlacedInlay(inlay, read.artwork(), plan));
  }
}
