package slabwright.desk.cards;

import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;
import slabwright.desk.shell.Controls;
import slabwright.desk.shell.Icons;
import slabwright.words.Words;

/** The heading of a card, which folds and unfolds it, and what stands beside it. */
final class CardHead extends VBox {
  private final FontIcon sign = Icons.of(Feather.CHEVRON_DOWN, 14);
  private final Button heading;
  private final Words words;
  private final HBox beside = new HBox();
  private final Label asks = Controls.sentence("", "card-asks");

  /**
   * A heading.
   *
   * @param turn folds or unfolds the card
   */
  CardHead(String key, Words words, Runnable turn) {
    this.words = words;
    heading = Controls.button("", "card-title", turn);
    heading.setId("fold-" + key);
    heading.setGraphic(sign);
    heading.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(heading, Priority.ALWAYS);
    heading.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            turn.run();
            e.consume();
          }
        });
    HBox line = new HBox(heading, beside);
    line.getStyleClass().add("card-head");
    asks.setId("asks-" + key);
    asks.setMaxWidth(Double.MAX_VALUE);
    getChildren().addAll(line, asks);
    Controls.show(asks, false);
  }

  /** Puts a control at the right; a folded card does not show it. */
  void beside(Node node) {
    beside.getChildren().add(node);
  }

  /** Says something under the heading behind an exclamation mark; empty for nothing. */
  void ask(String what) {
    asks.setText("! " + what);
    Controls.show(asks, !what.isEmpty());
  }

  void show(String title, boolean folded) {
    heading.setText(title);
    sign.setIconCode(folded ? Feather.CHEVRON_RIGHT : Feather.CHEVRON_DOWN);
    Controls.show(beside, !folded);
    String said =
        folded
            ? words.say("desk.cards.card-head.folded", title)
            : words.say("desk.cards.card-head.open", title);
    if (!said.equals(heading.getAccessibleText())) {
      heading.setAccessibleText(said);
      heading.notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
    }
  }
}
