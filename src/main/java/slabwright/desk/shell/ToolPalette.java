package slabwright.desk.shell;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.tool.ActiveTool;
import slabwright.desk.tool.ToolGroup;
import slabwright.desk.tool.ToolName;

/** The stage's tools in words, each with the letter that takes it up. */
public final class ToolPalette extends Scrolled {
  private final DeskContext bench;
  private final ActiveTool tools;
  private final Map<ToolName, ToggleButton> buttons = new EnumMap<>(ToolName.class);
  private final VBox list;
  private Stage shown;

  public ToolPalette(DeskContext bench, ActiveTool tools) {
    this(bench, tools, new VBox());
  }

  private ToolPalette(DeskContext bench, ActiveTool tools, VBox list) {
    super(list);
    this.list = list;
    this.bench = bench;
    this.tools = tools;
    list.getStyleClass().add("tool-list");
    getStyleClass().add("tool-palette");
    setId("tools");
    for (ToolName t : ToolName.values()) {
      buttons.put(t, button(t));
    }
  }

  /** Shows the tools of the stage. */
  public void refresh() {
    Stage stage = bench.focus().stage();
    if (stage != shown) {
      shown = stage;
      list.getChildren().setAll(shelves(ToolName.of(stage)));
      pseudoClassStateChanged(PseudoClass.getPseudoClass("many"), list.getChildren().size() > 8);
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

  /** The tools in their order; one that begins a shelf has its caption over it. */
  private List<Node> shelves(List<ToolName> shown) {
    List<Node> all = new ArrayList<>();
    ToolGroup shelf = ToolGroup.TOP;
    for (ToolName t : shown) {
      // Shelves are of marks alone: at other stages a marking tool stands among the few.
      if (bench.focus().stage() == Stage.MARK && t.shelf() != shelf) {
        shelf = t.shelf();
        all.add(Controls.label(said(shelf), "tool-shelf"));
      }
      all.add(buttons.get(t));
    }
    return all;
  }

  private String said(ToolGroup shelf) {
    return shelf.words().map(bench.words()::say).orElse("");
  }

  private ToggleButton button(ToolName t) {
    ToggleButton b = new ToggleButton();
    Label key = Controls.label(t.key(), "tool-key");
    HBox row =
        new HBox(Controls.label(bench.words().say(t.words()), "tool-word"), Controls.spring(), key);
    row.setAlignment(Pos.CENTER_LEFT);
    b.setGraphic(row);
    b.setId("tool-" + t.name());
    b.getStyleClass().setAll("tool");
    b.setMaxWidth(Double.MAX_VALUE);
    b.setAccessibleHelp(said(t.shelf()));
    b.setOnAction(e -> tools.take(t));
    return Controls.named(b, bench.words().say(t.words()), t.key());
  }
}
