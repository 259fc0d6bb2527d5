package slabwright.desk.shell;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.tool.ActiveTool;
import slabwright.desk.tool.Tool;
import slabwright.units.BareUnit;
import slabwright.words.Words;

/** The line at the foot of the slab: what to do next, its choices, and a field to type into. */
public final class EntryBar extends VBox {
  private static final double WIDEST = 900;

  private final ActiveTool tools;
  private final Words words;
  private final Runnable acted;
  private final Runnable home;
  private final Label prompt = Controls.sentence("", "entry-prompt");
  private final Label what = Controls.label("", "entry-what");
  private final Label meaning = Controls.label("", "entry-meaning");
  private final Label standing = Controls.label("", "entry-standing");
  private final Label wrong = Controls.sentence("", "entry-wrong");
  private final TextField field = new TextField();
  private final HBox options = new HBox();
  private final FlowPane row = new FlowPane();
  private double widest = WIDEST;
  private List<String> shown = List.of();

  /**
   * The line for the tool in hand.
   *
   * @param acted told after something was typed or chosen
   * @param home gives the keys back to the slab
   */
  public EntryBar(ActiveTool tools, Words words, Runnable acted, Runnable home) {
    this.tools = tools;
    this.words = words;
    this.acted = acted;
    this.home = home;
    getStyleClass().add("entry-bar");
    field.setId("entry");
    wrong.setId("entry-wrong");
    meaning.setId("entry-meaning");
    field.textProperty().addListener((o, was, is) -> mean());
    field.getStyleClass().add("entry-field");
    options.getStyleClass().add("entry-options");
    options.setAlignment(Pos.CENTER_LEFT);
    row.getChildren().setAll(what, field, meaning, options, standing);
    row.setAlignment(Pos.CENTER_LEFT);
    row.setPrefWrapLength(WIDEST);
    row.getStyleClass().add("entry-row");
    getChildren().addAll(prompt, row, wrong);
    setMaxHeight(Region.USE_PREF_SIZE);
    setPickOnBounds(false);
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    Controls.show(wrong, false);
    Controls.show(options, false);
  }

  /** Wraps what is wider than this. */
  public void setWidest(double width) {
    widest = Math.max(240, width);
    requestLayout();
  }

  @Override
  protected double computeMaxWidth(double height) {
    return Math.min(widest, prefWidth(-1));
  }

  /** Shows what the tool says now. */
  public void refresh() {
    Tool tool = tools.tool();
    prompt.setText(words.say(tool.prompt()));
    Optional<String> entry = tool.entry().map(words::say);
    Controls.show(field, entry.isPresent());
    Controls.show(what, entry.isPresent());
    what.setText(entry.map(said -> tool.bare().map(u -> stated(said, u)).orElse(said)).orElse(""));
    mean();
    field.setPromptText(words.say(tool.example()));
    field.setAccessibleText(entry.orElse(words.say("desk.shell.entry-bar.length")));
    standing.setText(tool.standing().map(words::say).orElse(""));
    Controls.show(standing, tool.standing().isPresent());
    options(tool.options());
    boolean more = entry.isPresent() || !tool.options().isEmpty() || tool.standing().isPresent();
    Controls.show(row, more);
  }

  private String stated(String entry, BareUnit unit) {
    return words.say("desk.shell.entry-bar.in-unit", entry, unit.word());
  }

  /** Says while one types what the line would be taken as. */
  private void mean() {
    String line = field.getText();
    Optional<String> read =
        line.isBlank() ? Optional.empty() : tools.tool().meaning(line).filter(m -> !m.isEmpty());
    meaning.setText(read.map(m -> words.say("desk.cards.length-field.means", m)).orElse(""));
    Controls.show(meaning, field.isVisible());
  }

  private void options(List<Tool.Option> now) {
    List<String> key = now.stream().map(o -> words.say(o.words()) + o.chosen()).toList();
    if (key.equals(shown)) {
      return;
    }
    shown = key;
    options.getChildren().setAll(now.stream().map(this::chip).toList());
    Controls.show(options, !now.isEmpty());
  }

  private ToggleButton chip(Tool.Option o) {
    String said = words.say(o.words());
    ToggleButton b = new ToggleButton(said);
    b.getStyleClass().addAll("plain-button", "option-chip");
    b.setSelected(o.chosen());
    b.setAccessibleText(said);
    Controls.identify(b, "option", o.words());
    b.setOnAction(
        e -> {
          o.take().run();
          acted.run();
        });
    return b;
  }

  /** Puts the typing cursor into the field, if there is one now. */
  public boolean focusField() {
    if (field.isVisible()) {
      field.requestFocus();
      return true;
    }
    return false;
  }

  /** Begins a typed line with a character that was typed elsewhere. */
  public boolean begin(String first) {
    if (!focusField()) {
      return false;
    }
    field.setText(first);
    field.end();
    return true;
  }

  /**
   * Takes the line as typed; empty means to close or finish. What was taken gives the keys back to
   * the slab; what was refused is selected, so that typing replaces it.
   */
  public void enter() {
    Optional<String> fault = tools.tool().type(field.getText()).map(words::say);
    wrong.setText(fault.orElse(""));
    Controls.show(wrong, fault.isPresent());
    if (fault.isEmpty()) {
      field.clear();
      home.run();
    } else if (field.isFocused()) {
      field.selectAll();
    }
    acted.run();
  }

  /** Whether the typed line has the keys. */
  public boolean isTyping() {
    return field.isFocused();
  }

  private void key(KeyEvent e) {
    boolean empty = field.getText().isEmpty();
    boolean used =
        switch (e.getCode()) {
          case ENTER -> {
            enter();
            yield true;
          }
          case LEFT -> plain(e) && tools.tool().steer(-1, 0);
          case RIGHT -> plain(e) && tools.tool().steer(1, 0);
          case UP -> plain(e) && tools.tool().steer(0, 1);
          case DOWN -> plain(e) && tools.tool().steer(0, -1);
          case BACK_SPACE -> empty && tools.tool().stepBack();
          case ESCAPE -> {
            field.clear();
            Controls.show(wrong, false);
            yield !empty;
          }
          default -> false;
        };
    if (used) {
      e.consume();
      acted.run();
    }
    if (e.getCode() != KeyCode.ENTER) {
      Controls.show(wrong, false);
    }
  }

  private static boolean plain(KeyEvent e) {
    return !e.isShiftDown() && !e.isShortcutDown();
  }
}
