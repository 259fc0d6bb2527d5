package slabwright.inlay;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slabwright.inlay.artwork.picture.TraceSettings;
import slabwright.site.GraphicSource;
import slabwright.units.SortedCopy;

/**
 * How a graphic's file is read, beside its width and colours.
 *
 * @param page of a PDF, from 1
 * @param tracing of a picture; a drawing has no use of it
 * @param merged colours that count as another, {@code #rrggbb}
 */
public record GraphicSettings(int page, TraceSettings tracing, Map<String, String> merged) {
  public GraphicSettings {
    merged = SortedCopy.of(merged);
  }

  /** As an inlay's source says. */
  public static GraphicSettings of(GraphicSource source) {
    TraceSettings tracing =
        source
            .picture()
            .map(
                t ->
                    new TraceSettings(
                        OptionalInt.of(t.colours()),
                        OptionalDouble.of(t.speck().mm()),
                        t.roundness(),
                        Optional.of(t.background()),
                        t.square()))
            .orElse(TraceSettings.TOLD);
    return new GraphicSettings(source.page().orElse(1), tracing, Map.of());
  }
}
