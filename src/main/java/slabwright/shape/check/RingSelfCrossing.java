package slabwright.shape.check;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.operation.valid.IsSimpleOp;
import slabwright.shape.Jts;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Questions about single rings. */
public final class RingSelfCrossing {
  private RingSelfCrossing() {}

  /** A point where the ring crosses or touches itself, if it does. */
  public static Optional<Vec> selfCrossing(Ring ring) {
    Coordinate[] closed = Jts.closed(ring);
    if (closed.length < 4) {
      return Optional.empty();
    }
    Coordinate at = new IsSimpleOp(Jts.FACTORY.createLinearRing(closed)).getNonSimpleLocation();
    return Optional.ofNullable(at).map(Jts::vec);
  }
}
