package slabwright.desk.shell;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import org.kordamp.ikonli.feather.Feather;
import slabwright.words.Words;

/** The one menu: everything about files and looks, with its keys. */
final class MainMenuButton extends MenuButton {
  MainMenuButton(Commands commands, Words words) {
    setId("menu");
    setGraphic(Icons.of(Feather.MENU, 18));
    getStyleClass().addAll("plain-button", "desk-menu");
    Controls.named(this, words.say("desk.shell.main-menu-button.plan-edits-and-look"), "");
    Map<String, Menu> inside = new LinkedHashMap<>();
    for (Commands.Group group : commands.groups()) {
      List<MenuItem> items = group.commands().stream().map(MainMenuButton::item).toList();
      if (group.menu().isEmpty()) {
        add(getItems(), items);
      } else {
        if (!inside.containsKey(group.menu())) {
          Menu menu = new Menu(group.menu());
          inside.put(group.menu(), menu);
          add(getItems(), List.of(menu));
        }
        add(inside.get(group.menu()).getItems(), items);
      }
    }
  }

  private static void add(List<MenuItem> to, List<? extends MenuItem> items) {
    if (!to.isEmpty() && items.size() > 1) {
      to.add(new SeparatorMenuItem());
    }
    to.addAll(items);
  }

  private static MenuItem item(Commands.Command c) {
    MenuItem item = new MenuItem(c.words());
    item.setId("menu-" + c.id());
    item.setOnAction(e -> c.does().run());
    if (!c.key().isEmpty()) {
      item.setAccelerator(KeyCombination.valueOf(c.key()));
    }
    return item;
  }
}
