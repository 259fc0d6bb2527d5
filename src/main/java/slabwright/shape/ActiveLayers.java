package slabwright.shape;

import java.util.Arrays;
import java.util.NoSuchElementException;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/**
 * The layers that fill one face, while a label is asked for it. Only good during that call: the
 * next face changes it.
 */
public final class ActiveLayers {
  private final int[] ids;
  private final WindingNumbers windings;

  /** Layer ids in rising order, by position. */
  ActiveLayers(int[] ids, WindingNumbers windings) {
    this.ids = ids;
    this.windings = windings;
  }

  public boolean isEmpty() {
    return windings.active().isEmpty();
  }

  /** Whether the layer fills this face; false for an id that no layer has. */
  public boolean contains(int id) {
    int position = Arrays.binarySearch(ids, id);
    return position >= 0 && windings.active().get(position);
  }

  /**
   * The id of the topmost layer.
   *
   * @throws NoSuchElementException when no layer fills this face
   */
  public int top() {
    return topWhere(id -> true).orElseThrow();
  }

  /** The id of the topmost layer that passes the test. */
  public OptionalInt topWhere(IntPredicate test) {
    for (int p = windings.active().length() - 1; p >= 0; ) {
      if (test.test(ids[p])) {
        return OptionalInt.of(ids[p]);
      }
      p = p == 0 ? -1 : windings.active().previousSetBit(p - 1);
    }
    return OptionalInt.empty();
  }

  /** The ids of all layers that fill this face, rising. */
  public int[] ids() {
    return windings.active().stream().map(p -> ids[p]).toArray();
  }

  /**
   * How often the layer's rings run round this face, counter-clockwise positive.
   *
   * @throws NoSuchElementException when no layer has the id
   */
  public int winding(int id) {
    int position = Arrays.binarySearch(ids, id);
    if (position < 0) {
      throw new NoSuchElementException("no layer " + id);
    }
    return windings.winding(position);
  }
}
