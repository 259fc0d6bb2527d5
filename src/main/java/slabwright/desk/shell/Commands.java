package slabwright.desk.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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

  /**
   * Commands shown together.
   *
   * @param menu the name of the menu that they stand in; empty is the main one
   */
  record Group(String menu, List<Command> commands) {}

  private final List<Group> groups = new ArrayList<>();

  /** Adds a group, shown together in the menu. */
  public void group(Command... commands) {
    groups.add(new Group("", List.of(commands)));
  }

  /** Adds a group to a menu of its own name inside the main one, so that this one fits a screen. */
  public void submenu(String menu, Command... commands) {
    groups.add(new Group(menu, List.of(commands)));
  }

  List<Group> groups() {
    return groups;
  }

  Stream<Command> all() {
    return groups.stream().flatMap(g -> g.commands().stream());
  }

  /** The command of that id. */
  public Optional<Command> find(String id) {
    return all().filter(c -> c.id().equals(id)).findFirst();
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
    return all()
        .filter(c -> !c.key().isEmpty() && KeyCombination.valueOf(c.key()).match(e))
        .findFirst();
  }
}
