package slabwright.inlay;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import slabwright.floor.FloorTakeoff;
import slabwright.site.Inlay;
import slabwright.site.StencilSpec;
import slabwright.units.Recent;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * Inlays placed, each worked out again only when something that it depends on has changed: the
 * graphic's file, its settings, or the floor within reach of its spray.
 */
public final class InlayCache {
  private static final int ROOM = 16;

  /** All that the reading of a graphic depends on. */
  private record GraphicKey(
      Path file,
      FileTime modified,
      long size,
      double width,
      StencilSpec spec,
      GraphicSettings how) {}

  /** All that a placed inlay depends on. */
  private record PlanKey(GraphicKey graphic, Inlay inlay, InlayContext context) {}

  private final Recent<GraphicKey, Result<GraphicReader.Reading>> graphics = new Recent<>(ROOM);
  private final Recent<PlanKey, PlacedInlay> plans = new Recent<>(ROOM);

  /**
   * Reads the graphic and plans the inlay on its floor.
   *
   * @param file the graphic
   * @param takeoff of the floor area it lies on
   * @param units in which findings write sizes
   * @throws IOException when the file breaks while it is read
   */
  public PlacedInlay.Placing place(Inlay inlay, Path file, FloorTakeoff takeoff, UnitSystem units)
      throws IOException {
    boolean there = Files.isRegularFile(file);
    GraphicKey key =
        new GraphicKey(
            file,
            there ? Files.getLastModifiedTime(file) : FileTime.fromMillis(0),
            there ? Files.size(file) : 0,
            inlay.width().mm(),
            inlay.spec(),
            GraphicSettings.of(inlay.source()));
    Result<GraphicReader.Reading> reading = read(key);
    if (reading instanceof Result.Refused<GraphicReader.Reading> refused) {
      return new PlacedInlay.Placing.Refused(inlay, refused.message());
    }
    GraphicReader.Reading read = reading.orThrow();
    InlayContext context = InlayContextBuilder.of(inlay, takeoff).build(read.graphic()).in(units);
    return new PlacedInlay.Placing.Done(
        plans.get(
            new PlanKey(key, inlay, context), () -> PlacedInlay.planned(inlay, read, context)));
  }

  private Result<GraphicReader.Reading> read(GraphicKey key) throws IOException {
    try {
      return graphics.get(
          key,
          () -> {
            try {
              return GraphicReader.read(key.file(), key.width(), key.spec(), key.how());
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Forgets all, as after a graphic changed on disk. */
  public void clear() {
    graphics.clear();
    plans.clear();
  }
}
