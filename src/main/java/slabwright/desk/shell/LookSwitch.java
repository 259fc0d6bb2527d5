package slabwright.desk.shell;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.model.scene.ExpectedLook;
import slabwright.words.Words;

/** Shows the floor as it should look, or as a drawing; and what such a picture is worth. */
public final class LookSwitch extends VBox {
  private final ExpectedLook look;
  private final Words words;
  private final ToggleButton toggle = new ToggleButton();
  private final Label worth = Controls.label("", "look-worth");
  private final Button save;

  /**
   * A switch.
   *
   * @param saves writes the pictures into files
   */
  public LookSwitch(ExpectedLook look, Words words, Runnable saves) {
    this.look = look;
    this.words = words;
    getStyleClass().add("look-switch");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    toggle.setId("as-it-should-look");
    toggle.setText(words.say("desk.shell.look-switch.as-it-should-look"));
    toggle.getStyleClass().add("option-chip");
    toggle.setFocusTraversable(false);
    toggle.setOnAction(e -> look.set(toggle.isSelected()));
    save = Controls.button(words.say("desk.shell.look-switch.save-as-png"), "soft-button", saves);
    save.setId("save-look");
    save.setFocusTraversable(false);
    worth.setId("look-worth");
    getChildren().addAll(new HBox(4, toggle, save), worth);
  }

  /** Shows how it stands. */
  public void refresh() {
    toggle.setSelected(look.isOn());
    Controls.show(save, look.isOn());
    Controls.show(worth, look.isOn());
    worth.setText(
        look.painted()
            .filter(p -> !p.uncoloured().isEmpty())
            .map(p -> words.say("desk.shell.look-switch.no-colour", p.uncoloured().get(0)))
            .orElseGet(() -> words.say("desk.shell.look-switch.what-to-expect")));
  }
}
