package slabwright.desk.shell;

import java.util.List;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.Duration;
import slabwright.units.Message;

/** Small controls in the desk's style, each with a name for readers and a tooltip with its key. */
public final class Controls {
  /** Between feet, inches and their fraction: 24′ 6 1/2″. */
  private static final Pattern INSIDE_LENGTH =
      Pattern.compile("(?<=′) (?=\\d)|(?<=\\d) (?=\\d+/\\d+″)");

  private Controls() {}

  /** A button in words. */
  public static Button button(String words, String style, Runnable does) {
    Button b = new Button(words);
    b.getStyleClass().addAll("plain-button", style);
    b.setOnAction(e -> does.run());
    b.setAccessibleText(words);
    return b;
  }

  /** A button that shows an icon; its words are for the tooltip and for readers. */
  public static Button icon(Node icon, String words, String key, Runnable does) {
    Button b = new Button();
    b.setGraphic(icon);
    b.getStyleClass().addAll("plain-button", "icon-button");
    b.setOnAction(e -> does.run());
    named(b, words, key);
    return b;
  }

  /** Gives a control its name and a tooltip that ends with its key. */
  public static <B extends ButtonBase> B named(B control, String words, String key) {
    control.setAccessibleText(words);
    String said = key.isEmpty() ? words : words + "   " + key;
    if (control.getTooltip() == null) {
      // Each one has a scene of its own: far too dear to make anew at every refresh.
      Tooltip tip = new Tooltip(said);
      tip.setShowDelay(Duration.millis(350));
      control.setTooltip(tip);
    } else if (!said.equals(control.getTooltip().getText())) {
      control.getTooltip().setText(said);
    }
    return control;
  }

  /** Names a control after what it says, the same in every language. */
  public static void identify(Node node, String sort, Message said) {
    node.setId(sort + "-" + said.key().substring(said.key().lastIndexOf('.') + 1));
  }

  /** Puts words into a field, unless they stand there already: the cursor then stays as it is. */
  public static void type(TextInputControl field, String words) {
    if (!words.equals(field.getText())) {
      field.setText(words);
    }
  }

  /** The last style class of a label that has others before it; left alone when it is that one. */
  public static void style(Label label, String last) {
    List<String> classes = label.getStyleClass();
    if (!classes.get(classes.size() - 1).equals(last)) {
      classes.set(classes.size() - 1, last);
    }
  }

  /** The words with no line's end inside a length in feet and inches, where it reads as two. */
  public static String unbroken(String words) {
    return INSIDE_LENGTH.matcher(words).replaceAll("\u00a0");
  }

  public static Label label(String words, String... styles) {
    Label l = new Label(words);
    l.getStyleClass().addAll(styles);
    return l;
  }

  /** A label that may take several lines. */
  public static Label sentence(String words, String... styles) {
    Label l = label(unbroken(words), styles);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    return l;
  }

  /** Takes up what room is left. */
  public static Region spring() {
    Region r = new Region();
    HBox.setHgrow(r, Priority.ALWAYS);
    return r;
  }

  /** Shows a node and gives it room, or neither. */
  public static void show(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }
}
