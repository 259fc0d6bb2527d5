package slabwright.desk.shell;

import java.util.function.BooleanSupplier;
import javafx.event.Event;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import slabwright.desk.model.Desk;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/**
 * Digits, units and eighths for a thumb. They go into the field that has the typing cursor, else
 * into the line at the foot of the slab.
 */
public final class NumberPad extends GridPane {
  private static final int COLUMNS = 6;
  private static final String FEET =
      "7|8|9|\u2032|1/8|5/8|4|5|6|\u2033|1/4|3/4|1|2|3|\u00d7|3/8|7/8|0|.|,|-|1/2|\u232b"
          + "|\u2190|\u2191|\u2193|\u2192|esc|enter";

  private static final String METRES =
      "7|8|9|m|\u232b|esc|4|5|6|mm|\u2190|\u2192|1|2|3|\u00d7|\u2191|\u2193|0|.|,|-|enter";

  private final Desk desk;
  private final Words words;
  private final BooleanSupplier begin;
  private UnitSystem shown;

  /**
   * A pad.
   *
   * @param begin puts the typing cursor into the line at the foot of the slab; false when that
   *     takes none now
   */
  public NumberPad(Desk desk, Words words, BooleanSupplier begin) {
    this.desk = desk;
    this.words = words;
    this.begin = begin;
    setId("number-pad");
    getStyleClass().add("number-pad");
    setAlignment(Pos.TOP_CENTER);
    setMinHeight(Region.USE_PREF_SIZE);
  }

  /** Shows the keys of the site's units; none are made while it is not shown. */
  public void refresh() {
    UnitSystem units = desk.site().units();
    if (!isVisible() || units == shown) {
      return;
    }
    shown = units;
    getChildren().clear();
    String signs = units == UnitSystem.METRIC ? METRES : FEET;
    for (String sign : signs.split("\\|", -1)) {
      int n = getChildren().size();
      add(of(sign), n % COLUMNS, n / COLUMNS);
    }
  }

  private Button of(String sign) {
    return switch (sign) {
      case "\u232b" -> sends(sign, words.say("desk.shell.number-pad.back"), KeyCode.BACK_SPACE);
      case "\u2190" -> sends(sign, words.say("desk.shell.number-pad.left"), KeyCode.LEFT);
      case "\u2191" -> sends(sign, words.say("desk.shell.number-pad.up"), KeyCode.UP);
      case "\u2193" -> sends(sign, words.say("desk.shell.number-pad.down"), KeyCode.DOWN);
      case "\u2192" -> sends(sign, words.say("desk.shell.number-pad.right"), KeyCode.RIGHT);
      case "esc" -> sends(KeyCode.ESCAPE);
      case "enter" -> {
        Button enter = sends(KeyCode.ENTER);
        enter.getStyleClass().add("pad-enter");
        yield enter;
      }
      default -> key(sign, sign, () -> type(sign));
    };
  }

  /** A key that is called as on a keyboard. */
  private Button sends(KeyCode code) {
    return sends(code.getName(), code.getName(), code);
  }

  private Button sends(String sign, String said, KeyCode code) {
    return key(sign, said, () -> send(code));
  }

  private static Button key(String sign, String said, Runnable does) {
    Button b = new PadKey(sign);
    b.getStyleClass().addAll("plain-button", "pad-key");
    b.setAccessibleText(said);
    b.setId("pad-" + sign.replace('/', '-'));
    b.setMaxWidth(Double.MAX_VALUE);
    b.setOnAction(
        e -> {
          does.run();
          // The screen would take a button's action as the end of typing.
          e.consume();
        });
    return b;
  }

  /** A key leaves the typing cursor where it is. */
  private static final class PadKey extends Button {
    PadKey(String sign) {
      super(sign);
      setFocusTraversable(false);
    }

    @Override
    public void requestFocus() {
      // The field that is typed into keeps it.
    }
  }

  private void type(String sign) {
    if (!(getScene().getFocusOwner() instanceof TextInputControl) && !begin.getAsBoolean()) {
      return;
    }
    if (getScene().getFocusOwner() instanceof TextInputControl field) {
      String before = field.getText(0, field.getSelection().getStart());
      boolean apart = sign.length() == 3 && before.matches(".*[\\d\u2032]");
      field.replaceSelection(
          apart ? " " + sign : sign.equals("\u00d7") || sign.equals(",") ? sign + " " : sign);
    }
  }

  /** As if the key were pressed on what has the keys now. */
  private void send(KeyCode code) {
    Node owner = getScene().getFocusOwner();
    if (owner != null) {
      Event.fireEvent(
          owner, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
    }
  }
}
