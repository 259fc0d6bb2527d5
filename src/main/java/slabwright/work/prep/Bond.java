package slabwright.work.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;

/**
 * The hardness of the metal that holds the diamonds. Hard concrete takes a soft bond, soft concrete
 * a hard one: a hard bond on a hard floor glazes, a soft bond on a soft floor wears away. Bands of
 * a tool maker's guide, common practice; the trade press agrees on the direction.
 */
public enum Bond {
  EXTRA_HARD(2, 3),
  HARD(4, 5),
  SOFT(6, 7),
  EXTRA_SOFT(8, 9);

  private final double from;
  private final double to;

  Bond(double from, double to) {
    this.from = from;
    this.to = to;
  }

  public Message word() {
    return switch (this) {
      case EXTRA_HARD -> Message.of("work.bond.extra-hard-bond");
      case HARD -> Message.of("work.bond.hard-bond");
      case SOFT -> Message.of("work.bond.soft-bond");
      case EXTRA_SOFT -> Message.of("work.bond.extra-soft-bond");
    };
  }

  /** The words of several; empty for none. */
  public static Optional<Message> words(List<Bond> bonds) {
    return bonds.stream().map(Bond::word).reduce((a, b) -> Message.of("work.bond.and", a, b));
  }

  /**
   * The bond for a Mohs reading; two, to try side by side, when it lies between bands. Past either
   * end the nearest.
   */
  public static List<Bond> of(double mohs) {
    List<Bond> found = new ArrayList<>();
    for (Bond b : values()) {
      if (mohs > b.from - 1 && mohs < b.to + 1) {
        found.add(b);
      }
    }
    if (found.isEmpty()) {
      found.add(mohs < EXTRA_HARD.from ? EXTRA_HARD : EXTRA_SOFT);
    }
    return List.copyOf(found);
  }
}
