package slabwright.desk;

import javafx.css.PseudoClass;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.CardColumn;
import slabwright.desk.shell.NumberPad;

/** The column of cards, and at its foot the number pad: it covers nothing that one clicks on. */
final class SidePanel extends VBox {
  private CardColumn cards;

  SidePanel(NumberPad pad) {
    getStyleClass().add("side-panel");
    setMaxWidth(Region.USE_PREF_SIZE);
    getChildren().add(pad);
  }

  /** The cards come later. */
  void setCards(CardColumn column) {
    cards = column;
    setVgrow(column, Priority.ALWAYS);
    getChildren().add(0, column);
  }

  /** Puts the cards away, or takes them out again; the pad stays. */
  void fold(boolean folded) {
    if (folded == getChildren().contains(cards)) {
      if (folded) {
        getChildren().remove(cards);
      } else {
        getChildren().add(0, cards);
      }
      setMaxHeight(folded ? Region.USE_PREF_SIZE : Double.MAX_VALUE);
      pseudoClassStateChanged(PseudoClass.getPseudoClass("folded"), folded);
    }
  }
}
