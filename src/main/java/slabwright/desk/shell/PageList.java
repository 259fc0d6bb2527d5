package slabwright.desk.shell;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import slabwright.desk.model.compute.SheetPages;
import slabwright.sheets.page.PrintedPage;
import slabwright.words.Words;

/** The pages by their titles; a click shows one. */
public final class PageList extends ScrollPane {
  private static final double NUMBER = 28;
  private static final double TITLE = 168;

  private final SheetPages pages;
  private final Words words;
  private final VBox list = new VBox();
  private List<Object> shown = List.of();

  public PageList(SheetPages pages, Words words) {
    this.pages = pages;
    this.words = words;
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
    String area = "";
    for (int i = 0; i < pages.pages().size(); i++) {
      PrintedPage page = pages.pages().get(i);
      if (i == 0 || !page.area().equals(area)) {
        area = page.area();
        list.getChildren()
            .add(
                Controls.label(
                    area.isEmpty() ? words.say("desk.shell.page-list.whole-site") : area,
                    "page-area"));
      }
      list.getChildren().add(row(i, page));
    }
    Controls.show(this, !pages.pages().isEmpty());
  }

  private ToggleButton row(int i, PrintedPage page) {
    ToggleButton b = new ToggleButton();
    Label number = Controls.label(String.valueOf(i + 1), "page-number");
    number.setMinWidth(NUMBER);
    Text title = new Text(page.title());
    title.getStyleClass().add("page-word");
    title.setWrappingWidth(TITLE);
    HBox line = new HBox(number, title);
    line.setAlignment(Pos.CENTER_LEFT);
    b.setGraphic(line);
    b.getStyleClass().setAll("tool", "page-row");
    b.setSelected(i == pages.number());
    b.setMaxWidth(Double.MAX_VALUE);
    b.setAlignment(Pos.CENTER_LEFT);
    b.setOnAction(e -> pages.show(i));
    return Controls.named(b, words.say("desk.shell.page-list.page", i + 1, page.title()), "");
  }
}
