package slabwright.desk.cards.mark;

import java.util.List;
import java.util.function.BiConsumer;
import javafx.scene.Node;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;

/** Lets the rows of a list be dragged to another place; a line shows where a row would go. */
final class MarkReordering {
  private static final List<String> LINES = List.of("drop-above", "drop-below");

  private final Pane list;
  private final BiConsumer<Integer, Integer> moved;
  private int held = -1;

  /**
   * Listens to nothing yet.
   *
   * @param moved told the row that was dragged and the place it gets, both counted from the top
   */
  MarkReordering(Pane list, BiConsumer<Integer, Integer> moved) {
    this.list = list;
    this.moved = moved;
  }

  void listenTo(Node row) {
    row.addEventHandler(MouseEvent.MOUSE_PRESSED, e -> held = list.getChildren().indexOf(row));
    row.addEventHandler(MouseEvent.MOUSE_DRAGGED, e -> show(gap(e)));
    row.addEventHandler(
        MouseEvent.MOUSE_RELEASED,
        e -> {
          int gap = gap(e);
          show(-1);
          int to = gap > held ? gap - 1 : gap;
          if (held >= 0 && to != held) {
            moved.accept(held, to);
          }
          held = -1;
        });
  }

  /** Between which rows the pointer is: 0 above the first. */
  private int gap(MouseEvent e) {
    double y = list.sceneToLocal(e.getSceneX(), e.getSceneY()).getY();
    int gap = 0;
    for (Node row : list.getChildren()) {
      gap += y > row.getBoundsInParent().getCenterY() ? 1 : 0;
    }
    return gap;
  }

  private void show(int gap) {
    list.getChildren().forEach(r -> r.getStyleClass().removeAll(LINES));
    boolean stays = gap == held || gap == held + 1;
    if (gap < 0 || stays) {
      return;
    }
    int n = list.getChildren().size();
    list.getChildren()
        .get(Math.min(gap, n - 1))
        .getStyleClass()
        .add(gap < n ? "drop-above" : "drop-below");
  }
}
