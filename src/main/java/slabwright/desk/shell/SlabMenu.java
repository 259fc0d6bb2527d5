package slabwright.desk.shell;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import slabwright.desk.model.Selection;
import slabwright.words.Words;

/** What can be done at a place of the slab: on a right-click, or when the thumb rests there. */
public final class SlabMenu {
  private static final List<String> OF_PICKED =
      List.of(
          "cut",
          "copy",
          "duplicate",
          "remove",
          "later",
          "earlier",
          "turn-left",
          "turn-right",
          "photo");
  private static final List<String> OF_PLAN =
      List.of("undo", "redo", "paste", "all", "fit", "fit-site");

  private static final List<String> OF_SEVERAL =
      List.of(
          "line-left",
          "line-right",
          "line-tops",
          "line-feet",
          "line-across",
          "line-up",
          "space-across",
          "space-up");

  private final Words words;
  private final ContextMenu menu = new ContextMenu();
  private final Commands commands;
  private final Selection picked;

  public SlabMenu(Commands commands, Selection picked, Words words) {
    this.words = words;
    this.commands = commands;
    this.picked = picked;
  }

  /** Opens the menu of what is picked. */
  public void open(Node slab, double screenX, double screenY) {
    menu.getItems().clear();
    if (!picked.selected().isEmpty()) {
      add(OF_PICKED);
      if (picked.selected().size() > 1) {
        menu.getItems().add(arranging());
      }
      menu.getItems().add(new SeparatorMenuItem());
    }
    add(OF_PLAN);
    menu.show(slab, screenX, screenY);
  }

  public void close() {
    menu.hide();
  }

  private void add(List<String> ids) {
    menu.getItems().addAll(items(ids));
  }

  private Menu arranging() {
    Menu more = new Menu(words.say("desk.shell.slab-menu.in-line"));
    more.setId("slab-menu-in-line");
    more.getItems().addAll(items(OF_SEVERAL));
    return more;
  }

  private List<MenuItem> items(List<String> ids) {
    return ids.stream().map(commands::find).flatMap(Optional::stream).map(SlabMenu::item).toList();
  }

  private static MenuItem item(Commands.Command c) {
    MenuItem item = new MenuItem(c.words());
    item.setId("slab-menu-" + c.id());
    item.setOnAction(e -> c.does().run());
    return item;
  }
}
