package slabwright.desk.shell;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import slabwright.desk.model.Selection;

/** What can be done at a place of the slab: on a right-click, or when the thumb rests there. */
public final class SlabMenu {
  private static final List<String> OF_PICKED =
      List.of("cut", "copy", "duplicate", "remove", "later", "earlier", "turn-left", "turn-right");
  private static final List<String> OF_PLAN = List.of("undo", "redo", "paste", "all", "fit");

  private final ContextMenu menu = new ContextMenu();
  private final Commands commands;
  private final Selection picked;

  public SlabMenu(Commands commands, Selection picked) {
    this.commands = commands;
    this.picked = picked;
  }

  /** Opens the menu of what is picked. */
  public void open(Node slab, double screenX, double screenY) {
    menu.getItems().clear();
    if (!picked.selected().isEmpty()) {
      add(OF_PICKED);
      menu.getItems().add(new SeparatorMenuItem());
    }
    add(OF_PLAN);
    menu.show(slab, screenX, screenY);
  }

  public void close() {
    menu.hide();
  }

  private void add(List<String> ids) {
    for (String id : ids) {
      commands
          .find(id)
          .ifPresent(
              c -> {
                MenuItem item = new MenuItem(c.words());
                item.setId("slab-menu-" + id);
                item.setOnAction(e -> c.does().run());
                menu.getItems().add(item);
              });
    }
  }
}
