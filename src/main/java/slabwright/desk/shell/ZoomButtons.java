package slabwright.desk.shell;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import slabwright.words.Words;

/** Closer, farther and the whole floor, for those who do not use the wheel. */
public final class ZoomButtons extends VBox {
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
                () -> commands.run("fit")));
  }
}
