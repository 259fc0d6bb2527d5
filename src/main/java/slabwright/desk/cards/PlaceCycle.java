package slabwright.desk.cards;

import java.util.List;
import slabwright.words.Words;

/** Goes to the next place each time, and after the last to the first; says at which it is. */
public final class PlaceCycle implements Runnable {
  private final List<Runnable> places;
  private int gone;

  public PlaceCycle(List<Runnable> places) {
    this.places = List.copyOf(places);
  }

  @Override
  public void run() {
    places.get(gone % places.size()).run();
    gone++;
  }

  /** As in "2 of 11"; empty before the first. */
  String where(Words words) {
    return gone == 0
        ? ""
        : words.say("desk.cards.place-cycle.of", (gone - 1) % places.size() + 1, places.size());
  }
}
