package slabwright.desk;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolls a column as far as it takes to see a node. */
final class Scrolling {
  private Scrolling() {}

  /** Whether anything had to be scrolled. */
  static boolean toSee(Node node) {
    Node up = node.getParent();
    while (up != null && !(up instanceof ScrollPane)) {
      up = up.getParent();
    }
    return up != null && scroll((ScrollPane) up, node);
  }

  private static boolean scroll(ScrollPane pane, Node node) {
    Bounds seen = pane.localToScene(pane.getLayoutBounds());
    Bounds at = node.localToScene(node.getLayoutBounds());
    if (at.getMinY() >= seen.getMinY() && at.getMaxY() <= seen.getMaxY()) {
      return false;
    }
    Node all = pane.getContent();
    double over = all.getLayoutBounds().getHeight() - pane.getViewportBounds().getHeight();
    double y = all.sceneToLocal(at).getMinY() - 60;
    pane.setVvalue(Math.max(0, Math.min(1, y / over)));
    return true;
  }
}
