package slabwright.desk.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

  /** Commands whose keys mean the text while one types. */
  private static final Set<String> OF_TEXT =
      Set.of(
          "cut",
          "copy",
          "paste",
          "duplicate",
          "remove",
          "all",
          "later",
          "earlier",
          "turn-left",
          "turn-right");

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

  /** Does what the key asks for, unless it is a key of the text that is being typed. */
  public boolean handleWhileTyping(KeyEvent e) {
    Optional<Command> hit = asked(e).filter(c -> !OF_TEXT.contains(c.id()));
    hit.ifPresent(c -> c.does().run());
    return hit.isPresent();
  }

  /** Does what the key asks for, if anything. */
  public boolean handle(KeyEvent e) {
    Optional<Command> hit = asked(e);
    hit.ifPresent(c -> c.does().run());
    return hit.isPresent();
  }

  private Optional<Command> asked(KeyEvent e) {
    return groups.stream()
        .flatMap(List::stream)
        .filter(c -> !c.key().isEmpty() && KeyCombination.valueOf(c.key()).match(e))
        .findFirst();
  }
}
