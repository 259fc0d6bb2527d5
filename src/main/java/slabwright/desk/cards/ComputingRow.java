package slabwright.desk.cards;

import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import slabwright.desk.shell.Controls;
import slabwright.words.Words;

/** Says that something is being worked out, and lets one give it up. */
public final class ComputingRow {
  private final HBox row = new HBox();

  public HBox node(Words words, Runnable cancel) {
    ProgressBar bar = new ProgressBar();
    bar.setPrefWidth(170);
    bar.setAccessibleText(words.say("desk.cards.computing-row.being-worked-out"));
    row.setSpacing(10);
    row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    row.getChildren()
        .setAll(bar, Controls.button(words.say("desk.cards.computing-row.cancel"), "link", cancel));
    return row;
  }

  public void show(boolean on) {
    Controls.show(row, on);
  }
}
