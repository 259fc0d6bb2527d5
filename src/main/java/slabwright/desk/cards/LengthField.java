package slabwright.desk.cards;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.shell.Controls;
import slabwright.units.Result;
import slabwright.words.Words;

/** A field that reads one value; a refused text stays, with the sentence that says why. */
public final class LengthField extends VBox {
  static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

  /** More than a card has beside a name, so that all of that is taken. */
  private static final double LINE = 230;

  private static final PseudoClass TYPING = PseudoClass.getPseudoClass("typing");

  private final Words words;
  private final Supplier<String> now;
  private final Function<String, Result<?>> take;
  private final TextField field = new TextField();
  private final Label why = Controls.sentence("", "field-wrong");
  private final Label meaning = Controls.label("", "field-meaning");
  private Supplier<String> unit = () -> "";
  private Function<String, Optional<String>> meant = s -> Optional.empty();
  private String shown = "";
  private boolean wrong;

  /**
   * A field.
   *
   * @param now the value as shown
   * @param take reads and applies a text
   * @param words what is refused is said in
   */
  public LengthField(
      String name, Supplier<String> now, Function<String, Result<?>> take, Words words) {
    this.words = words;
    this.now = now;
    this.take = take;
    getStyleClass().add("value-field");
    field.setAccessibleText(name);
    field.setPrefColumnCount(9);
    field.setMinWidth(Region.USE_PREF_SIZE);
    getChildren().addAll(field, why);
    Controls.show(why, false);
    field.setOnAction(e -> enter());
    field
        .textProperty()
        .addListener(
            (o, was, is) -> {
              if (wrong) {
                right();
              }
            });
    field.addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE && (wrong || !field.getText().equals(now.get()))) {
            back();
            field.selectAll();
            e.consume();
          }
        });
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is && !wrong && !field.getText().equals(now.get())) {
                enter();
              }
            });
  }

  /**
   * States the unit of a bare number, and while one types what the text would be taken as.
   *
   * @param bare the unit
   * @param reads the meaning of a text, empty while it can't be read
   */
  LengthField states(Supplier<String> bare, Function<String, Optional<String>> reads) {
    unit = bare;
    meant = reads;
    meaning.setMinWidth(Region.USE_PREF_SIZE);
    field.textProperty().addListener((o, was, is) -> mean());
    mean();
    return this;
  }

  /** What stands beside the field: its unit, or what is being typed as it is understood. */
  Label meaning() {
    return meaning;
  }

  private void mean() {
    boolean typing = field.isFocused() && !field.getText().equals(shown);
    Optional<String> read = typing ? meant.apply(field.getText()) : Optional.empty();
    meaning.pseudoClassStateChanged(TYPING, read.isPresent());
    meaning.setText(read.map(m -> words.say("desk.cards.length-field.means", m)).orElseGet(unit));
  }

  /** For words rather than a length. */
  public LengthField wide() {
    field.setPrefColumnCount(11);
    return this;
  }

  /** For a number of one or two digits. */
  public LengthField small() {
    field.setPrefColumnCount(3);
    return this;
  }

  /** For a line of words, as wide as the card leaves room. */
  public LengthField line() {
    field.setMinWidth(40);
    field.setPrefColumnCount(17);
    setPrefWidth(LINE);
    return this;
  }

  /** For several beside each other. */
  public LengthField narrow() {
    field.setMinWidth(40);
    field.setPrefColumnCount(5);
    setPrefWidth(10);
    return this;
  }

  public LengthField id(String id) {
    field.setId(id);
    meaning.setId(id + "-meaning");
    return this;
  }

  /**
   * Lets the up and down keys move the value.
   *
   * @param move told 1 or -1, and whether Shift asks for a larger step
   */
  public LengthField steps(BiConsumer<Integer, Boolean> move) {
    field.addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          boolean up = e.getCode() == KeyCode.UP;
          if (up || e.getCode() == KeyCode.DOWN) {
            move.accept(up ? 1 : -1, e.isShiftDown());
            back();
            field.selectAll();
            e.consume();
          }
        });
    return this;
  }

  /** Shows the value as it is now, unless something else is being typed or was refused. */
  void refresh() {
    String next = now.get();
    boolean untouched = field.getText().equals(shown) || field.getText().isEmpty();
    if (wrong ? !next.equals(shown) : untouched || !field.isFocused()) {
      back();
    }
  }

  private void back() {
    shown = now.get();
    right();
    Controls.type(field, shown);
    mean();
  }

  private void enter() {
    if (field.getText().equals(now.get())) {
      right();
      return;
    }
    Result<?> read = take.apply(field.getText());
    if (read instanceof Result.Refused<?> bad) {
      why.setText(words.say(bad.message()));
      Controls.show(why, true);
      field.pseudoClassStateChanged(WRONG, true);
      wrong = true;
      field.selectAll();
    } else {
      back();
      field.selectAll();
    }
  }

  private void right() {
    wrong = false;
    Controls.show(why, false);
    field.pseudoClassStateChanged(WRONG, false);
  }
}
