package slabwright.tape;

import java.util.OptionalInt;
import slabwright.units.LetterNumbering;

/** Corner names in walking order: A to Z, then AA, AB … */
public final class CornerName {
  private CornerName() {}

  /** The name of the corner with this index, 0 being A. */
  public static String of(int corner) {
    return LetterNumbering.of(corner);
  }

  /** The wall from this corner to the next, as A-B. */
  public static String wall(int wall, int corners) {
    return of(wall) + "-" + of((wall + 1) % corners);
  }

  /** The index behind a name of one or two letters, large or small; empty for anything else. */
  public static OptionalInt index(String name) {
    if (!name.matches("[A-Za-z]{1,2}")) {
      return OptionalInt.empty();
    }
    int index = -1;
    for (int i = 0; i < name.length(); i++) {
      index = (index + 1) * 26 + Character.toUpperCase(name.charAt(i)) - 'A';
    }
    return OptionalInt.of(index);
  }
}
