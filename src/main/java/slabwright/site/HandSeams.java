package slabwright.site;

import java.util.List;
import slabwright.units.Length;

/**
 * Seams where a person put them.
 *
 * @param strips which way the strips run on the blank as read
 * @param places of the seams, from the blank's left side (strips down) or its top (strips across)
 */
public record HandSeams(Strips strips, List<Length> places) {
  /** Which way strips run on the blank as read. */
  public enum Strips {
    DOWN,
    ACROSS
  }

  public HandSeams {
    places = List.copyOf(places);
  }
}
