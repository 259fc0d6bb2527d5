package slabwright.desk.cards;

import java.util.List;
import java.util.function.Function;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Stage;
import slabwright.desk.shell.Controls;

/** The column of cards: what is picked, then the stage's answers. */
public final class CardColumn extends ScrollPane {
  private final Bench bench;
  private final Function<Stage, List<Card>> cards;
  private final VBox list = new VBox();

  public CardColumn(Bench bench, Function<Stage, List<Card>> cards) {
    this.bench = bench;
    this.cards = cards;
    getStyleClass().add("card-column");
    list.getStyleClass().add("card-list");
    setContent(list);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
  }

  /** Shows the cards of the stage as they are now. */
  public void refresh() {
    List<Card> now = cards.apply(bench.focus().stage());
    if (!list.getChildren().equals(now)) {
      list.getChildren().setAll(now);
      setVvalue(0);
    }
    now.forEach(c -> Controls.show(c, c.refresh()));
  }
}
