package slabwright.desk.model;

import java.util.ArrayList;
import java.util.List;

/** Tells those who asked that something changed, in the order they asked. */
public final class Signal {
  private final List<Runnable> heard = new ArrayList<>();

  public void subscribe(Runnable r) {
    heard.add(r);
  }

  public void fire() {
    List.copyOf(heard).forEach(Runnable::run);
  }
}
