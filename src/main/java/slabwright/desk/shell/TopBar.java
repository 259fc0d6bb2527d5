package slabwright.desk.shell;

import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.tool.ActiveTool;

/** The bar across the top: the site, its floor areas, the path of stages, undo and redo. */
public final class TopBar extends HBox {
  private final SiteTitle title;
  private final AreaChips chips;
  private final StageBar path;
  private final UndoButtons undo;

  public TopBar(DeskContext bench, Releases releases, ActiveTool tools, Commands commands) {
    getStyleClass().add("top-bar");
    setAlignment(Pos.CENTER_LEFT);
    title = new SiteTitle(bench);
    chips = new AreaChips(bench, commands);
    path = new StageBar(bench, releases);
    undo = new UndoButtons(bench, tools, commands);
    HBox.setHgrow(path, Priority.ALWAYS);
    getChildren().addAll(new MainMenuButton(commands, bench.words()), title, chips, path, undo);
  }

  /** Shows the site as it is now. */
  public void refresh() {
    title.refresh();
    chips.refresh();
    path.refresh();
    undo.refresh();
  }
}
