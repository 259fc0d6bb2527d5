package slabwright.desk.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.words.Words;

/** What is still missing, in one list over the slab; each line leads to its field. */
public final class OpenList extends Scrolled {
  private static final double WIDE = 420;

  private final Words words;
  private final Consumer<OpenQuestion> lead;
  private final VBox lines;
  private List<OpenQuestion> shown = List.of();

  /**
   * A list.
   *
   * @param lead takes the person to the field of a question
   */
  public OpenList(Words words, Consumer<OpenQuestion> lead) {
    this(words, lead, new VBox());
  }

  private OpenList(Words words, Consumer<OpenQuestion> lead, VBox lines) {
    super(lines);
    this.lines = lines;
    this.words = words;
    this.lead = lead;
    setId("open-questions");
    getStyleClass().add("open-list");
    lines.getStyleClass().add("open-lines");
    lines.setPrefWidth(WIDE);
  }

  /** Shows the questions, headed by what they hold up. */
  public void show(List<OpenQuestion> now) {
    if (now.equals(shown) && !lines.getChildren().isEmpty()) {
      return;
    }
    shown = now;
    lines.getChildren().clear();
    String head =
        now.isEmpty()
            ? words.say("desk.shell.open-list.nothing")
            : words.say("desk.shell.open-list.head", now.size());
    lines.getChildren().add(Controls.label(head, "open-title"));
    Optional<OpenQuestion.Holds> before = Optional.empty();
    for (int i = 0; i < now.size(); i++) {
      OpenQuestion q = now.get(i);
      if (!before.equals(Optional.of(q.holds()))) {
        before = Optional.of(q.holds());
        lines.getChildren().add(Controls.label(words.say(q.holds().word()), "open-holds"));
      }
      lines.getChildren().add(line(q, i));
    }
  }

  private Button line(OpenQuestion q, int number) {
    Button b = Controls.button(words.say(q.what()), "open-line", () -> lead.accept(q));
    b.setId("open-" + number);
    b.setWrapText(true);
    b.setMaxWidth(Double.MAX_VALUE);
    b.setMinHeight(Region.USE_PREF_SIZE);
    return b;
  }
}
