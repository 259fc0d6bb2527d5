package slabwright.desk.shell;

import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import slabwright.desk.model.compute.TallyItem;
import slabwright.words.Words;

/** The figures that never leave: one column each along the bottom. */
public final class TallyBar extends HBox {
  private final Words words;
  private List<TallyItem> shown = List.of();

  public TallyBar(Words words) {
    this.words = words;
    getStyleClass().add("tally");
    setId("tally");
  }

  /** Shows the figures. */
  public void show(List<TallyItem> items) {
    if (items.equals(shown)) {
      return;
    }
    if (items.size() != getChildren().size()) {
      getChildren().setAll(items.stream().map(i -> column()).toList());
    }
    for (int i = 0; i < items.size(); i++) {
      fill((VBox) getChildren().get(i), items.get(i));
    }
    shown = items;
  }

  private static VBox column() {
    VBox box =
        new VBox(Controls.label("", "tally-what"), Controls.label("", "tally-value", "tone-plain"));
    box.setAlignment(Pos.CENTER_LEFT);
    box.getStyleClass().add("tally-item");
    box.setMinWidth(0);
    box.setPrefWidth(120);
    HBox.setHgrow(box, Priority.ALWAYS);
    return box;
  }

  private void fill(VBox box, TallyItem item) {
    ((Label) box.getChildren().get(0)).setText(words.say(item.what()));
    Label value = (Label) box.getChildren().get(1);
    value.setText(item.value());
    Controls.style(value, "tone-" + item.tone().name().toLowerCase(Locale.ROOT));
    Controls.identify(value, "tally", item.what());
    box.setAccessibleText(words.say("desk.shell.tally-bar.figure", item.what(), item.value()));
  }
}
