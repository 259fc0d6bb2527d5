package slabwright.desk.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** Everything the desk can be told from the menu or by a key, in groups. */
public final class Commands {
  /**
   * One thing to do.
   *
   * @param key such as {@code Shortcut+S}; may be empty
   */
  public record Command(String id, String words, String key, Runnable does) {
    /** The key as people read it. */
    public String shownKey() {
      return key.isEmpty() ? "" : KeyCombination.valueOf(key).getDisplayText();
    }
  }

  private final List<List<Command>> groups = new ArrayList<>();

  /** Adds a group, shown together in the menu. */
  public void group(Command... commands) {
    groups.add(List.of(commands));
  }

  public List<List<Command>> groups() {
    return groups;
  }

  /** The command of that id. */
  public Optional<Command> find(String id) {
    return groups.stream().flatMap(List::stream).filter(c -> c.id().equals(id)).findFirst();
  }

  public void run(String id) {
    find(id).ifPresent(c -> c.does().run());
  }

  /** Does what the key asks for, if anything. */
  public boolean handle(KeyEvent e) {
    Optional<Command> hit =
        groups.stream()
            .flatMap(List::stream)
            .filter(c -> !c.key().isEmpty() && KeyCombination.valueOf(c.key()).match(e))
            .findFirst();
    hit.ifPresent(c -> c.does().run());
    return hit.isPresent();
  }
}
