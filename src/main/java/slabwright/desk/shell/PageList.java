package slabwright.desk.shell;

import java.util.List;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.model.SheetPages;
import slabwright.sheets.Page;

/** The pages by their titles; a click shows one. */
public final class PageList extends ScrollPane {
  private final SheetPages pages;
  private final VBox list = new VBox();
  private List<Object> shown = List.of();

  public PageList(SheetPages pages) {
    this.pages = pages;
    getStyleClass().addAll("tool-palette", "page-list");
    list.setSpacing(2);
    setContent(list);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
  }

  public void refresh() {
    List<Object> now = List.of(pages.pages(), pages.number());
    if (now.equals(shown)) {
      return;
    }
    shown = now;
    list.getChildren().clear();
    for (int i = 0; i < pages.pages().size(); i++) {
      list.getChildren().add(row(i, pages.pages().get(i)));
    }
    Controls.show(this, !pages.pages().isEmpty());
  }

  private ToggleButton row(int i, Page page) {
    ToggleButton b = new ToggleButton();
    b.setGraphic(Controls.label((i + 1) + "   " + page.title(), "page-word"));
    b.getStyleClass().setAll("tool");
    b.setSelected(i == pages.number());
    b.setMaxWidth(Double.MAX_VALUE);
    b.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    b.setOnAction(e -> pages.show(i));
    return Controls.named(b, "Page " + (i + 1) + ", " + page.title(), "");
  }
}
