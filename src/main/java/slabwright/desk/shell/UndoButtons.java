package slabwright.desk.shell;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import slabwright.desk.model.DeskContext;
import slabwright.desk.tool.ActiveTool;
import slabwright.units.Message;
import slabwright.words.Words;

/** Undo and redo, each naming what it would do, and the look switch. */
final class UndoButtons extends HBox {
  private final DeskContext bench;
  private final ActiveTool tools;
  private final Button undo;
  private final Button redo;
  private final Label undoName = Controls.label("", "step-name");
  private final Label redoName = Controls.label("", "step-name");

  UndoButtons(DeskContext bench, ActiveTool tools, Commands commands) {
    this.bench = bench;
    this.tools = tools;
    getStyleClass().add("undo-buttons");
    setAlignment(Pos.CENTER_RIGHT);
    undo = step(bench.words().say("desk.shell.undo-buttons.undo"), "undo", undoName, commands);
    redo = step(bench.words().say("desk.shell.undo-buttons.redo"), "redo", redoName, commands);
    Button look =
        Controls.icon(
            Icons.of(Feather.SUN, 16),
            bench.words().say("desk.shell.undo-buttons.light-or-dark-look"),
            "Ctrl+L",
            () -> commands.run("look"));
    look.setId("look");
    Button panel =
        Controls.icon(
            Icons.of(Feather.SIDEBAR, 16),
            bench.words().say("desk.shell.undo-buttons.panel"),
            "Ctrl+B",
            () -> commands.run("panel"));
    panel.setId("panel-switch");
    getChildren().addAll(undo, redo, panel, look);
  }

  private static Button step(String word, String id, Label name, Commands commands) {
    Button b = Controls.button("", "step-button", () -> commands.run(id));
    b.setId(id);
    VBox lines = new VBox(Controls.label(word, "step-word"), name);
    lines.setAlignment(Pos.CENTER_LEFT);
    b.setGraphic(lines);
    return b;
  }

  void refresh() {
    Words words = bench.words();
    Optional<Message> last = tools.tool().lastStep().or(bench.desk()::undoName);
    Optional<Message> next = bench.desk().redoName();
    undo.setDisable(last.isEmpty());
    redo.setDisable(next.isEmpty());
    undoName.setText(last.map(words::say).orElse("–"));
    redoName.setText(next.map(words::say).orElse("–"));
    String back =
        last.map(step -> words.say("desk.shell.undo-buttons.undo-step", step))
            .orElseGet(() -> words.say("desk.shell.undo-buttons.nothing-to-undo"));
    String again =
        next.map(step -> words.say("desk.shell.undo-buttons.redo-step", step))
            .orElseGet(() -> words.say("desk.shell.undo-buttons.nothing-to-redo"));
    Controls.named(undo, back, "Ctrl+Z");
    Controls.named(redo, again, "Ctrl+Y");
  }
}
