package slabwright.work.prep;

import java.util.ArrayList;
import java.util.List;

/**
 * The hardness of the metal that holds the diamonds. Hard concrete takes a soft bond, soft concrete
 * a hard one: a hard bond on a hard floor glazes, a soft bond on a soft floor wears away. Bands of
 * a tool maker's guide, common practice; the trade press agrees on the direction.
 */
public enum Bond {
  EXTRA_HARD("extra hard bond", 2, 3),
  HARD("hard bond", 4, 5),
  SOFT("soft bond", 6, 7),
  EXTRA_SOFT("extra soft bond", 8, 9);

  private final String word;
  private final double from;
  private final double to;

  Bond(String word, double from, double to) {
    this.word = word;
    this.from = from;
    this.to = to;
  }

  public String word() {
    return word;
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
