package slabwright.desk;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.TextInputControl;

/** What stands in a field of a card. */
final class Fields {
  private Fields() {}

  static String text(Node node) {
    return node instanceof TextInputControl field
        ? field.getText()
        : ((TextInputControl) ((Parent) node).lookup(".text-field")).getText();
  }
}
