package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;

/** One colour over all that the rings enclose by the even-odd rule. */
public record Fill(List<Ring> rings, Colour colour) implements PrimitiveInk {
  public Fill {
    rings = List.copyOf(rings);
  }

  public static Fill of(Colour colour, Region region) {
    return new Fill(region.rings(), colour);
  }

  public static Fill of(Colour colour, Ring ring) {
    return new Fill(List.of(ring), colour);
  }

  public static Fill of(Colour colour, Bounds b) {
    return of(colour, Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()));
  }

  @Override
  public Fill placed(View view) {
    return new Fill(rings.stream().map(r -> r.map(view.map())).toList(), colour);
  }

  @Override
  public void paintOn(Painter painter) {
    painter.fill(this);
  }

  @Override
  public Bounds reach() {
    return rings.stream().map(Ring::bounds).reduce(Bounds.EMPTY, Bounds::including);
  }
}
