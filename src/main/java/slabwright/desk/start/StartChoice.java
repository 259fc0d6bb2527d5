package slabwright.desk.start;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import slabwright.desk.shell.Controls;
import slabwright.desk.shell.Icons;

/** One large way to begin: what it is and what it is for. */
final class StartChoice extends Button {
  StartChoice(String id, Feather icon, String what, String why, String key, Runnable does) {
    setId(id);
    getStyleClass().setAll("start-choice");
    VBox words = new VBox(Controls.label(what, "choice-what"), Controls.label(why, "choice-why"));
    words.setSpacing(3);
    HBox row = new HBox(Icons.of(icon, 24), words);
    row.setSpacing(18);
    row.setAlignment(Pos.CENTER_LEFT);
    setGraphic(row);
    setMaxWidth(Double.MAX_VALUE);
    setAlignment(Pos.CENTER_LEFT);
    setOnAction(e -> does.run());
    Controls.named(this, what, key);
  }
}
