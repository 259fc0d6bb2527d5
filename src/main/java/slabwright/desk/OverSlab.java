package slabwright.desk;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import slabwright.desk.shell.NumberPad;

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

  /**
   * The number pad floats where there is room; else it lies below the slab, and covers nothing.
   *
   * @param over what it floats under
   */
  static void pad(NumberPad pad, boolean narrow, Pane slab, Pane foot, Node over) {
    if (narrow != foot.getChildren().contains(pad)) {
      slab.getChildren().remove(pad);
      foot.getChildren().remove(pad);
      if (narrow) {
        foot.getChildren().add(0, pad);
      } else {
        slab.getChildren().add(slab.getChildren().indexOf(over), pad);
      }
      pad.setLying(narrow);
    }
  }
}
