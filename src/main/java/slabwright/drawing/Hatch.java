package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A region filled with a pattern of real lines or marks, so that it prints the same everywhere.
 *
 * @param rings what is filled, by the even-odd rule
 * @param pitch the distance from line to line, millimetres of paper
 * @param origin a point of the pattern; patterns sharing it run on from one region into the next
 */
public record Hatch(List<Ring> rings, HatchPattern pattern, Pen pen, double pitch, Vec origin)
    implements Ink {
  public Hatch {
    rings = List.copyOf(rings);
    if (!(pitch > 0)) {
      throw new IllegalArgumentException("a hatch needs a pitch above 0");
    }
  }

  /** The pattern at its usual weight and pitch. */
  public static Hatch of(HatchPattern pattern, Colour colour, Region region) {
    return new Hatch(region.rings(), pattern, Pen.of(0.25, colour), 2, Vec.ZERO);
  }

  @Override
  public Hatch placed(View view) {
    return new Hatch(
        rings.stream().map(r -> r.map(view.map())).toList(),
        pattern,
        pen,
        pitch,
        view.onPaper(origin));
  }

  @Override
  public Bounds reach() {
    return rings.stream().map(Ring::bounds).reduce(Bounds.EMPTY, Bounds::including);
  }

  @Override
  public List<PrimitiveInk> parts(Bounds window) {
    return HatchParts.of(this, window);
  }
}
