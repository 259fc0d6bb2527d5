package slabwright.desk.shell;

import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Stage;
import slabwright.desk.tool.ToolBox;
import slabwright.desk.tool.ToolName;

/** The stage's tools in words, each with the letter that takes it up. */
public final class ToolPalette extends VBox {
  private final Bench bench;
  private final ToolBox tools;
  private final Map<ToolName, ToggleButton> buttons = new EnumMap<>(ToolName.class);
  private Stage shown;

  public ToolPalette(Bench bench, ToolBox tools) {
    this.bench = bench;
    this.tools = tools;
    getStyleClass().add("tool-palette");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    for (ToolName t : ToolName.values()) {
      buttons.put(t, button(t));
    }
  }

  /** Shows the tools of the stage. */
  public void refresh() {
    Stage stage = bench.focus().stage();
    if (stage != shown) {
      shown = stage;
      getChildren().setAll(ToolName.of(stage).stream().map(buttons::get).toList());
      pseudoClassStateChanged(
          javafx.css.PseudoClass.getPseudoClass("many"), getChildren().size() > 8);
    }
    buttons.forEach(
        (t, b) -> {
          b.setSelected(t == tools.name());
          if (t.needsPicture()) {
            Controls.show(b, bench.desk().site().underlay().isPresent());
          }
          b.setDisable(!t.drawsRooms() && t != ToolName.PICK && bench.focus().area().isEmpty());
        });
  }

  private ToggleButton button(ToolName t) {
    ToggleButton b = new ToggleButton();
    Label key = Controls.label(t.key(), "tool-key");
    HBox row = new HBox(Controls.label(t.words(), "tool-word"), Controls.spring(), key);
    row.setAlignment(Pos.CENTER_LEFT);
    b.setGraphic(row);
    b.setId("tool-" + t.name());
    b.getStyleClass().setAll("tool");
    b.setMaxWidth(Double.MAX_VALUE);
    b.setOnAction(e -> tools.take(t));
    return Controls.named(b, t.words(), t.key());
  }
}
