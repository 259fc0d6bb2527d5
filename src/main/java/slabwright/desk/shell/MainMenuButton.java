package slabwright.desk.shell;

import java.util.List;
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
    for (List<Commands.Command> group : commands.groups()) {
      if (!getItems().isEmpty()) {
        getItems().add(new SeparatorMenuItem());
      }
      group.forEach(c -> getItems().add(item(c)));
    }
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
