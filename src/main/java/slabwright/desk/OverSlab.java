package slabwright.desk;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;

/** Places what lies over the slab. */
final class OverSlab {
  private OverSlab() {}

  /** It is kept as a picture: its shadow is dear, and the slab moves below. */
  static void place(Node node, Pos where, Insets away) {
    node.setCache(true);
    StackPane.setAlignment(node, where);
    StackPane.setMargin(node, away);
  }

  /**
   * Puts the cards beside the slab, and what lies at the foot after them: Tab goes in the order in
   * which parts were put there.
   *
   * @param cards null where they are folded, or lie over the slab
   */
  static void beside(BorderPane screen, Node cards, Node foot) {
    screen.setRight(null);
    screen.setBottom(null);
    screen.setRight(cards);
    screen.setBottom(foot);
  }
}
