package slabwright.inlay.artwork.picture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slabwright.shape.Vec;

/**
 * How a picture is traced. What is not stated is told from the picture.
 *
 * @param colours how many colours it is brought down to, paper included
 * @param speckMm spots narrower than this at the inlay's width are left out
 * @param roundness how far corners are rounded, 0 (kept sharp) to 1 (all round)
 * @param background colour that counts as bare floor, {@code #rrggbb}; "" means none does
 * @param corners of a flat sign in a slanted photo, in pixels of the upright picture, from the
 *     sign's top left the way a clock goes; none when it is not slanted
 */
public record TraceSettings(
    OptionalInt colours,
    OptionalDouble speckMm,
    double roundness,
    Optional<String> background,
    List<Vec> corners) {
  /** Everything told from the picture. */
  public static final TraceSettings TOLD =
      new TraceSettings(
          OptionalInt.empty(), OptionalDouble.empty(), 0, Optional.empty(), List.of());

  public TraceSettings {
    corners = List.copyOf(corners);
  }
}
