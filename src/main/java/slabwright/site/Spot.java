package slabwright.site;

import slabwright.shape.Vec;
import slabwright.units.Length;

/** A place on the site: millimetres right and up from the site's origin, as typed or as drawn. */
public record Spot(Length x, Length y) {
  public static Spot mm(double x, double y) {
    return new Spot(Length.mm(x), Length.mm(y));
  }

  public static Spot of(Vec p) {
    return mm(p.x(), p.y());
  }

  public Vec vec() {
    return new Vec(x.mm(), y.mm());
  }
}
