package slabwright.desk.shell;

import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import slabwright.words.Words;

/** Closer, farther and the whole floor, for those who do not use the wheel. */
public final class ZoomButtons extends VBox {
  private static Button pad(Commands commands, Words words) {
    Button b =
        Controls.icon(
            Icons.of(Feather.GRID, 15),
            words.say("desk.shell.zoom-buttons.number-pad"),
            "Ctrl+K",
            () -> commands.run("number-pad"));
    b.setId("number-pad-switch");
    return b;
  }

  public ZoomButtons(Commands commands, Words words) {
    getStyleClass().add("zoom-buttons");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    getChildren()
        .addAll(
            Controls.icon(
                Icons.of(Feather.PLUS, 16),
                words.say("desk.shell.zoom-buttons.closer"),
                "+",
                () -> commands.run("closer")),
            Controls.icon(
                Icons.of(Feather.MINUS, 16),
                words.say("desk.shell.zoom-buttons.farther"),
                "−",
                () -> commands.run("farther")),
            Controls.icon(
                Icons.of(Feather.MAXIMIZE, 15),
                words.say("desk.shell.zoom-buttons.whole-floor"),
                "F",
                () -> commands.run("fit")),
            pad(commands, words));
  }
}
