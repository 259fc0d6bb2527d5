package slabwright.desk.cards;

import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** Takes the canvas to a place. */
public interface PlaceNavigator {
  void show(Bounds place);

  default void show(Vec place) {
    show(Bounds.EMPTY.including(place));
  }
}
