package slabwright.desk;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.stage.PopupWindow;
import javafx.stage.Stage;
import javafx.stage.Window;

/** What a list that hangs open shows. */
final class Popups {
  private Popups() {}

  /** The line of the open list that says a word. */
  static Node line(Stage stage, String word) {
    return DeskUnderTest.on(
        () ->
            Window.getWindows().stream()
                .filter(w -> w instanceof PopupWindow p && p.getOwnerWindow() == stage)
                .flatMap(w -> w.getScene().getRoot().lookupAll(".label").stream())
                .filter(n -> n instanceof Label && word.equals(((Labeled) n).getText()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line says " + word + seen(stage))));
  }

  /** Whether a menu hangs open. */
  static boolean hasMenu() {
    return DeskUnderTest.on(
        () ->
            Window.getWindows().stream().anyMatch(w -> w instanceof ContextMenu && w.isShowing()));
  }

  private static String seen(Stage stage) {
    List<String> words =
        Window.getWindows().stream()
            .filter(w -> w != stage)
            .flatMap(w -> w.getScene().getRoot().lookupAll(".label").stream())
            .map(n -> ((Labeled) n).getText())
            .toList();
    return "; lines: " + words;
  }
}
