package slabwright.inlay;

import java.io.IOException;
import java.nio.file.Path;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.artwork.Artwork;
import slabwright.site.Inlay;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/** An inlay of the plan with its graphic read and all that follows from where it lies. */
public record PlacedInlay(Inlay inlay, Artwork artwork, InlayPlan plan) {
  /** The inlay computed, or why not. */
  public sealed interface Placing {
    /** Computed. */
    record Done(PlacedInlay placed) implements Placing {}

    /** Not computed. */
    record Refused(Inlay inlay, Message message) implements Placing {}
  }

  /**
   * Reads the graphic and plans the inlay on its floor.
   *
   * @param graphic the SVG file
   * @param takeoff of the floor area it lies on
   * @param units in which findings write sizes
   * @throws IOException when the file breaks while it is read
   */
  public static Placing of(Inlay inlay, Path graphic, FloorTakeoff takeoff, UnitSystem units)
      throws IOException {
    Result<GraphicReader.Reading> reading =
        GraphicReader.read(graphic, inlay.width().mm(), inlay.spec());
    if (reading instanceof Result.Refused<GraphicReader.Reading> refused) {
      return new Placing.Refused(inlay, refused.message());
    }
    GraphicReader.Reading read = reading.orThrow();
    InlayContext context = InlayContextBuilder.of(inlay, takeoff).build().in(units);
    InlayPlan plan = InlayPlan.of(read.graphic(), inlay.spec(), context);
    return new Placing.Done(new PlacedInlay(inlay, read.artwork(), plan));
  }
}
