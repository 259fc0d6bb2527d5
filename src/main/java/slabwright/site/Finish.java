package slabwright.site;

import java.util.List;
import java.util.Optional;

/**
 * The finish system of a floor area: what goes on, in order. Products are named by their id in the
 * shop book.
 */
public record Finish(Optional<Exposure> exposure, List<Coat> coats) {
  public static final Finish NONE = new Finish(Optional.empty(), List.of());

  public Finish {
    coats = List.copyOf(coats);
  }

  /** One product in a number of coats. */
  public record Coat(String product, int coats, Target target) {}

  /** Where a coat goes. */
  public enum Target {
    WHOLE_FLOOR,
    INLAY
  }
}
