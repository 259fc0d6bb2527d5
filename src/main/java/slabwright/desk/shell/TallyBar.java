package slabwright.desk.shell;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.units.Message;
import slabwright.words.Words;

/**
 * The figures that never leave: one column each along the bottom, in two lines where there is
 * little room.
 */
public final class TallyBar extends VBox {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private static final PseudoClass TWO = PseudoClass.getPseudoClass("two-lines");

  /** So much room more than one line needs, before two become one again. */
  private static final double SPARE = 170;

  private final HBox first = new HBox();
  private final HBox second = new HBox();
  private final Words words;
  private final Consumer<Item> lead;
  private List<Button> columns = List.of();
  private List<Item> shown = List.of();

  /**
   * A bar.
   *
   * @param lead takes the person to where a figure comes from
   */
  public TallyBar(Words words, Consumer<Item> lead) {
    this.words = words;
    this.lead = lead;
    getStyleClass().add("tally");
    setId("tally");
    setMinWidth(0);
    second.setVisible(false);
    second.setManaged(false);
    getChildren().addAll(first, second);
    widthProperty().addListener((o, was, is) -> arrange(false));
  }

  /** Shows the figures. */
  public void show(List<Item> items) {
    if (items.equals(shown)) {
      return;
    }
    if (items.size() != columns.size()) {
      columns = items.stream().map(i -> column()).toList();
      arrange(true);
    }
    for (int i = 0; i < items.size(); i++) {
      fill(columns.get(i), items.get(i));
    }
    shown = items;
    arrange(false);
  }

  private void arrange(boolean anew) {
    if (getScene() == null || getWidth() <= 0) {
      first.getChildren().setAll(columns);
      return;
    }
    applyCss();
    double needed = 40;
    for (Button b : columns) {
      needed += 4 + b.prefWidth(-1);
    }
    boolean already = !second.getChildren().isEmpty();
    boolean two = getWidth() < needed + (already ? SPARE : 0);
    if (anew || two == second.getChildren().isEmpty()) {
      int split = two ? (columns.size() + 1) / 2 : columns.size();
      second.getChildren().clear();
      first.getChildren().setAll(columns.subList(0, split));
      second.getChildren().setAll(columns.subList(split, columns.size()));
      Controls.show(second, two);
      pseudoClassStateChanged(TWO, two);
    }
  }

  private static Button column() {
    VBox lines =
        new VBox(Controls.label("", "tally-what"), Controls.label("", "tally-value", "tone-plain"));
    lines.setAlignment(Pos.CENTER_LEFT);
    Button box = new Button();
    box.setGraphic(lines);
    box.setAlignment(Pos.CENTER_LEFT);
    box.setMaxWidth(Double.MAX_VALUE);
    box.getStyleClass().setAll("tally-item");
    box.setMinWidth(Region.USE_PREF_SIZE);
    HBox.setHgrow(box, Priority.ALWAYS);
    return box;
  }

  private void fill(Button box, Item item) {
    VBox lines = (VBox) box.getGraphic();
    box.setOnAction(e -> lead.accept(item));
    ((Label) lines.getChildren().get(0)).setText(words.say(item.what()));
    Label value = (Label) lines.getChildren().get(1);
    value.setText(item.value());
    Controls.style(value, "tone-" + item.tone().name().toLowerCase(Locale.ROOT));
    value.pseudoClassStateChanged(STALE, !item.isTrue());
    Controls.identify(value, "tally", item.what());
    box.setAccessibleText(words.say("desk.shell.tally-bar.figure", item.what(), item.value()));
  }

  /**
   * One figure of the tally.
   *
   * @param value as shown; a dash while it is not known
   * @param isTrue whether it is of what is shown, else of the plan a moment ago
   */
  public record Item(Message what, String value, Emphasis tone, boolean isTrue) {
    /** A figure of what is shown. */
    public Item(Message what, String value, Emphasis tone) {
      this(what, value, tone, true);
    }

    /** The same while it is of the plan a moment ago, unless it holds now. */
    public Item trueIf(boolean now) {
      return new Item(what, value, tone, now || tone == Emphasis.UNKNOWN);
    }

    /** How a figure is stressed. */
    public enum Emphasis {
      PLAIN,
      LOOK,
      CANT,
      UNKNOWN
    }

    public static Item of(Message what, String value) {
      return new Item(what, value, Emphasis.PLAIN);
    }

    public static Item unknown(Message what) {
      return new Item(what, "–", Emphasis.UNKNOWN);
    }
  }
}
