package slabwright.desk.shell;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import slabwright.desk.model.Stage;
import slabwright.desk.tool.ToolName;
import slabwright.units.Message;
import slabwright.words.Words;

/** All keys in one list over the desk; a word or a key typed above it leaves those that have it. */
public final class KeyList extends VBox {
  private static final double HIGH = 520;

  /** What a key does. */
  private record Line(String what, String key) {}

  private final Commands commands;
  private final Words words;
  private final Runnable home;
  private final TextField search = new TextField();
  private final VBox lines = new VBox();

  /**
   * A list, not shown yet.
   *
   * @param home gives the keys back to what lies below
   */
  public KeyList(Commands commands, Words words, Runnable home) {
    this.commands = commands;
    this.words = words;
    this.home = home;
    setId("key-list");
    getStyleClass().add("key-list");
    setMaxSize(Region.USE_PREF_SIZE, HIGH);
    search.setId("key-search");
    search.setPromptText(words.say("desk.shell.key-list.search"));
    search.setAccessibleText(words.say("desk.shell.key-list.search"));
    search.textProperty().addListener((o, was, is) -> fill());
    lines.getStyleClass().add("key-lines");
    Node away =
        Controls.icon(
            Icons.of(Feather.X, 15),
            words.say("desk.shell.key-list.away"),
            words.say("desk.shell.key-list.esc-key"),
            this::away);
    HBox head =
        new HBox(
            10,
            Controls.label(words.say("desk.shell.key-list.title"), "open-title"),
            search,
            Controls.spring(),
            away);
    head.setAlignment(Pos.CENTER_LEFT);
    Scrolled rows = new Scrolled(lines);
    rows.getStyleClass().add("key-rows");
    rows.setMaxWidth(Double.MAX_VALUE);
    getChildren().addAll(head, rows);
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    Controls.show(this, false);
  }

  /** Opens it with the cursor in the search, or puts it away. */
  public void turn() {
    if (isVisible()) {
      away();
    } else {
      search.clear();
      fill();
      Controls.show(this, true);
      search.requestFocus();
    }
  }

  private void away() {
    Controls.show(this, false);
    home.run();
  }

  private void key(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE) {
      away();
      e.consume();
    }
  }

  private void fill() {
    String asked = plain(search.getText().strip());
    List<HBox> rows =
        all().stream()
            .filter(l -> plain(l.what()).contains(asked) || plain(l.key()).contains(asked))
            .map(KeyList::row)
            .toList();
    lines.getChildren().setAll(rows);
    if (rows.isEmpty()) {
      lines.getChildren().add(Controls.label(words.say("desk.shell.key-list.none"), "card-hint"));
    }
  }

  /** Found whatever its capitals and accents. */
  private static String plain(String text) {
    return Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "");
  }

  private static HBox row(Line l) {
    Label key = Controls.label(l.key(), "key-cap");
    key.setMinWidth(Region.USE_PREF_SIZE);
    HBox row = new HBox(10, Controls.label(l.what()), Controls.spring(), key);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("key-line");
    return row;
  }

  private List<Line> all() {
    List<Line> all = new ArrayList<>();
    for (Stage s : Stage.values()) {
      all.add(new Line(words.say("desk.shell.key-list.to-stage", s.word()), s.key()));
    }
    commands.all().filter(c -> !c.key().isEmpty()).forEach(c -> all.add(line(c)));
    all.add(hand(Message.of("desk.shell.key-list.fit"), "F"));
    all.add(
        hand(
            Message.of("desk.shell.key-list.fit-site"),
            words.say("desk.shell.key-list.fit-site-key")));
    all.add(hand(Message.of("desk.shell.key-list.esc"), words.say("desk.shell.key-list.esc-key")));
    all.add(hand(Message.of("desk.shell.key-list.tab"), words.say("desk.shell.key-list.tab-key")));
    all.add(
        hand(Message.of("desk.shell.key-list.enter"), words.say("desk.shell.key-list.enter-key")));
    all.add(
        hand(
            Message.of("desk.shell.key-list.arrows"), words.say("desk.shell.key-list.arrows-key")));
    all.add(
        hand(Message.of("desk.shell.key-list.pick"), words.say("desk.shell.key-list.pick-key")));
    all.add(
        hand(Message.of("desk.shell.key-list.shift"), words.say("desk.shell.key-list.shift-key")));
    all.add(
        hand(Message.of("desk.shell.key-list.space"), words.say("desk.shell.key-list.space-key")));
    Stream.of(Stage.values())
        .flatMap(s -> ToolName.of(s).stream().map(t -> tool(t, s)))
        .forEach(all::add);
    return all;
  }

  private static Line line(Commands.Command c) {
    return new Line(c.words(), c.shownKey());
  }

  private Line hand(Message what, String key) {
    return new Line(words.say(what), key);
  }

  private Line tool(ToolName tool, Stage stage) {
    return new Line(
        words.say("desk.shell.key-list.at-stage", tool.words(), stage.word()), tool.key());
  }
}
