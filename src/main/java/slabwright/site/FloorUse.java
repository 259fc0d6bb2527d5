package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;

/**
 * What goes on on a floor, as far as the choice of a sealer asks. An absent answer was not asked
 * for yet, which is not a no.
 *
 * @param wet whether it gets wet in use
 * @param sun whether the sun falls on it
 * @param traffic whether chairs, carts or many feet go over it
 */
@RecordBuilder
public record FloorUse(Optional<Boolean> wet, Optional<Boolean> sun, Optional<Boolean> traffic)
    implements FloorUseBuilder.With {
  public static final FloorUse NOT_ASKED =
      new FloorUse(Optional.empty(), Optional.empty(), Optional.empty());
}
