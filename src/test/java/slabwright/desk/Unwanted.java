package slabwright.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import javafx.collections.ListChangeListener;
import javafx.event.Event;
import javafx.event.EventHandler;
import javafx.event.EventType;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;

/** Writes down input of a sort that a test does without, in every window that opens. */
final class Unwanted implements AutoCloseable {
  private final List<String> seen = Collections.synchronizedList(new ArrayList<>());
  private final EventHandler<InputEvent> watch;
  private final ListChangeListener<Window> opened =
      c -> {
        while (c.next()) {
          c.getAddedSubList().forEach(this::listen);
          c.getRemoved().forEach(this::leave);
        }
      };

  private Unwanted(Predicate<EventType<? extends Event>> sort) {
    watch =
        e -> {
          if (sort.test(e.getEventType())) {
            seen.add(e.toString());
          }
        };
    DeskUnderTest.on(
        () -> {
          Window.getWindows().forEach(this::listen);
          Window.getWindows().addListener(opened);
          return null;
        });
  }

  /** All of a pointer or a finger: moves, clicks, wheel, touches. */
  static Unwanted pointer() {
    return new Unwanted(t -> !isOf(t, KeyEvent.ANY));
  }

  /**
   * Keys of a keyboard. The number pad passes presses on, but nothing is let go and no character
   * comes of it; a real key that is pressed is let go as well.
   */
  static Unwanted keyboard() {
    return new Unwanted(t -> t == KeyEvent.KEY_RELEASED || t == KeyEvent.KEY_TYPED);
  }

  private static boolean isOf(EventType<?> type, EventType<?> sort) {
    return type != null && (type == sort || isOf(type.getSuperType(), sort));
  }

  private void listen(Window w) {
    w.addEventFilter(InputEvent.ANY, watch);
  }

  private void leave(Window w) {
    w.removeEventFilter(InputEvent.ANY, watch);
  }

  List<String> seen() {
    return List.copyOf(seen);
  }

  @Override
  public void close() {
    DeskUnderTest.on(
        () -> {
          Window.getWindows().removeListener(opened);
          Window.getWindows().forEach(this::leave);
          return null;
        });
  }
}
