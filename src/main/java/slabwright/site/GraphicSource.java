package slabwright.site;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.shape.Vec;
import slabwright.units.Length;

/**
 * Where a graphic comes from.
 *
 * @param page of a PDF, from 1; absent is the first
 * @param picture the picture that it was traced from, if it was
 */
public record GraphicSource(OptionalInt page, Optional<Traced> picture) {
  public static final GraphicSource ITSELF =
      new GraphicSource(OptionalInt.empty(), Optional.empty());

  /**
   * A picture and how it was traced.
   *
   * @param file path relative to the plan's folder and inside it
   * @param colours how many colours it is brought down to, 2 to 64
   * @param speck spots narrower than this at the inlay's width are left out
   * @param roundness how far corners are rounded, 0 (sharp) to 1 (round)
   * @param background colour that counts as bare floor, as {@code #rrggbb}; empty means none
   * @param square corners of a flat sign in a slanted photo, in pixels of the upright photo (x
   *     right, y down), from the sign's top left the way a clock goes; empty when it is not slanted
   */
  public record Traced(
      String file,
      int colours,
      Length speck,
      double roundness,
      String background,
      List<Vec> square) {
    public Traced {
      square = List.copyOf(square);
    }
  }
}
