package slabwright.desk.cards;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import slabwright.desk.shell.Controls;

/** A card of the right-hand column: a heading and short rows. */
public abstract class Card extends VBox {
  private final Label heading;
  private final HBox head;
  private final VBox body = new VBox();

  protected Card(String title) {
    getStyleClass().add("card");
    body.getStyleClass().add("card-body");
    heading = Controls.label(title, "card-title");
    head = new HBox(heading, Controls.spring());
    head.getStyleClass().add("card-head");
    getChildren().addAll(head, body);
  }

  /** Shows what is now; says whether the card is wanted at all. */
  public abstract boolean refresh();

  protected final void title(String words) {
    heading.setText(words);
  }

  /** Puts a control at the right of the heading. */
  protected final void beside(Node node) {
    head.getChildren().add(node);
  }

  protected final VBox body() {
    return body;
  }
}
