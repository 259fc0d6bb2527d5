package slabwright.desk.shell;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.tool.ActiveTool;

/**
 * The bar across the top: the site, its floor areas, the path of stages, undo and redo. Where that
 * is too much for one line the path has a line of its own.
 */
public final class TopBar extends VBox {
  private static final double GAP = 12;

  private final SiteTitle title;
  private final AreaChips chips;
  private final StageBar path;
  private final UndoButtons undo;
  private final MainMenuButton menu;
  private final HBox first = new HBox(GAP);
  private final HBox second = new HBox(GAP);

  public TopBar(DeskContext bench, Releases releases, ActiveTool tools, Commands commands) {
    getStyleClass().add("top-bar");
    setAlignment(Pos.CENTER_LEFT);
    menu = new MainMenuButton(commands, bench.words());
    title = new SiteTitle(bench);
    chips = new AreaChips(bench, commands);
    path = new StageBar(bench, releases);
    undo = new UndoButtons(bench, tools, commands);
    HBox.setHgrow(path, Priority.ALWAYS);
    first.setAlignment(Pos.CENTER_LEFT);
    second.setAlignment(Pos.CENTER);
    second.getStyleClass().add("second-line");
    getChildren().addAll(first, second);
    setMinWidth(0);
    arrange();
    widthProperty().addListener((o, was, is) -> arrange());
  }

  private void arrange() {
    double needed = 40;
    for (Region r : List.of(menu, title, chips, undo)) {
      needed += GAP + r.prefWidth(-1);
    }
    needed += path.minWidth(-1);
    boolean two = getWidth() > 0 && getWidth() < needed;
    List<Node> top =
        two
            ? List.of(menu, title, chips, Controls.spring(), undo)
            : List.of(menu, title, chips, path, undo);
    if (two != second.getChildren().contains(path) || first.getChildren().isEmpty()) {
      second.getChildren().clear();
      first.getChildren().setAll(top);
      if (two) {
        second.getChildren().setAll(path);
      }
      Controls.show(second, two);
    }
  }

  /** Shows the site as it is now. */
  public void refresh(List<OpenQuestion> open) {
    title.refresh();
    chips.refresh();
    path.refresh(open);
    undo.refresh();
    arrange();
  }
}
