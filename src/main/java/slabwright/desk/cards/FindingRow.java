package slabwright.desk.cards;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.shell.Controls;
import slabwright.words.Words;

/**
 * One short sentence with its sign, and a way to the place.
 *
 * @param offer mends it; empty when nothing here can
 * @param show takes the canvas to the place; empty when there is none
 */
public record FindingRow(
    Sign sign, String sentence, Optional<Runnable> show, Optional<Offer> offer) {
  public FindingRow(Sign sign, String sentence, Optional<Runnable> show) {
    this(sign, sentence, show, Optional.empty());
  }

  /** Something to be done about it, as a button with one word. */
  public record Offer(String word, Runnable take) {}

  /** ✓ fine, ! look here, ✕ can't. */
  public enum Sign {
    FINE("✓", "sign-fine"),
    LOOK("!", "sign-look"),
    CANT("✕", "sign-cant");

    private final String glyph;
    private final String style;

    Sign(String glyph, String style) {
      this.glyph = glyph;
      this.style = style;
    }
  }

  public static FindingRow fine(String sentence) {
    return new FindingRow(Sign.FINE, sentence, Optional.empty());
  }

  public static FindingRow look(String sentence) {
    return new FindingRow(Sign.LOOK, sentence, Optional.empty());
  }

  public HBox row(Words words) {
    Label glyph = Controls.label(sign.glyph, sign.style);
    glyph.setMinWidth(14);
    Label label = Controls.sentence(sentence);
    HBox.setHgrow(label, Priority.ALWAYS);
    label.setMaxWidth(Double.MAX_VALUE);
    HBox row = new HBox(glyph, label);
    row.getStyleClass().add("finding");
    row.setAlignment(Pos.TOP_LEFT);
    show.ifPresent(r -> row.getChildren().add(shower(r, words)));
    offer.ifPresent(
        o -> {
          var b = Controls.button(o.word(), "solid", o.take());
          b.setAccessibleText(words.say("desk.cards.finding-row.offer", o.word(), sentence));
          b.setMinWidth(56);
          row.getChildren().add(b);
        });
    return row;
  }

  private Node shower(Runnable goes, Words words) {
    return goes instanceof PlaceCycle many
        ? stepper(many, words)
        : shows(Controls.button(words.say("desk.cards.finding-row.show"), "link", goes), words);
  }

  private Button shows(Button b, Words words) {
    b.setAccessibleText(words.say("desk.cards.finding-row.show-where", sentence));
    b.setMinWidth(56);
    return b;
  }

  /** Below the button stands at which of the places one is. */
  private VBox stepper(PlaceCycle many, Words words) {
    Label where = Controls.label("", "step-where");
    Controls.show(where, false);
    Button b =
        shows(Controls.button(words.say("desk.cards.finding-row.show"), "link", many), words);
    b.setOnAction(
        e -> {
          many.run();
          where.setText(many.where(words));
          Controls.show(where, true);
          b.setAccessibleText(
              words.say(
                  "desk.cards.finding-row.show-the-next-now-at", many.where(words), sentence));
          b.notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
        });
    VBox both = new VBox(b, where);
    both.setAlignment(Pos.TOP_CENTER);
    both.setMinWidth(Region.USE_PREF_SIZE);
    return both;
  }
}
