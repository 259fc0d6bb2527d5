package slabwright.desk.cards.sheets;

import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.plan.ReleaseReading;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.shell.Controls;
import slabwright.site.Release;

/** Issues a numbered release and says what changed since one. */
public final class ReleaseCard extends Card {
  private static final int MOST = 12;
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final DeskContext bench;
  private final Releases releases;
  private final FieldRows rows;
  private final TextField note = new TextField();
  private final ChoiceBox<Integer> which = new ChoiceBox<>();
  private final HBox compare = new HBox(8);
  private final VBox changes = new VBox(4);
  private Optional<ReleaseReading.Since> shown = Optional.empty();
  private int opening;

  public ReleaseCard(DeskContext bench, Releases releases) {
    super(bench, "release", bench.words().say("desk.cards.sheets.release.release"));
    this.bench = bench;
    this.releases = releases;
    rows = new FieldRows(bench);
    rows.figure(words().say("desk.cards.sheets.release.last-issued"), this::last);
    note.setPromptText(words().say("desk.cards.sheets.release.note-such-as-sent-to"));
    note.setId("release-note");
    note.setAccessibleText(words().say("desk.cards.sheets.release.note-of-the-release"));
    var issue =
        Controls.button(
            words().say("desk.cards.sheets.release.issue-release"), "soft-button", this::issue);
    issue.setId("issue");
    issue.setMaxWidth(Double.MAX_VALUE);
    which.setId("since-release");
    which.setAccessibleText(words().say("desk.cards.sheets.release.what-changed-since-release"));
    which.valueProperty().addListener((o, was, is) -> compare(is));
    compare.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    compare
        .getChildren()
        .setAll(
            Controls.label(
                words().say("desk.cards.sheets.release.changed-since-release"), "row-name"),
            which);
    changes.setId("changes");
    body().getChildren().addAll(rows, compare, changes, note, issue);
  }

  private String last() {
    List<Release> all = bench.desk().site().releases();
    if (all.isEmpty()) {
      return words().say("desk.cards.sheets.release.none-yet");
    }
    Release r = all.get(all.size() - 1);
    return words().say("desk.cards.sheets.release.on", r.number(), r.issued().toString());
  }

  private void compare(Integer number) {
    if (number != null) {
      releases.compare(number);
    }
  }

  /** What was found of the plan a moment ago is dimmed until more is known; of another, it goes. */
  private void fill() {
    Optional<Integer> number = Optional.ofNullable(which.getValue());
    Optional<ReleaseReading.Since> known = number.flatMap(releases::since);
    changes.pseudoClassStateChanged(STALE, known.isEmpty());
    if (number.isEmpty() || opening != bench.desk().opening()) {
      opening = bench.desk().opening();
      changes.getChildren().clear();
      shown = Optional.empty();
    }
    if (known.isPresent() && !known.equals(shown)) {
      changes.getChildren().clear();
      shown = known;
      say(known.get().all().map(all -> all.stream().map(words()::line).toList()));
    }
  }

  private void say(Optional<List<String>> since) {
    if (since.isEmpty()) {
      say(FindingRow.look(words().say("desk.cards.sheets.release.its-frozen-copy-is-not")));
    } else if (since.get().isEmpty()) {
      say(FindingRow.fine(words().say("desk.cards.sheets.release.nothing-changed-sheets-and-cut")));
    } else {
      say(FindingRow.look(words().say("desk.cards.sheets.release.sheets-and-cut-files-say")));
      since.get().stream().limit(MOST).forEach(this::change);
      if (since.get().size() > MOST) {
        change(words().say("desk.cards.sheets.release.and-more", since.get().size() - MOST));
      }
    }
  }

  private void say(FindingRow f) {
    changes.getChildren().add(f.row(words()));
  }

  private void change(String said) {
    changes.getChildren().add(Controls.sentence("· " + said, "card-words", "change"));
  }

  private void issue() {
    releases.issue(note.getText().strip());
    note.clear();
  }

  @Override
  protected void refresh() {
    rows.refresh();
    List<Integer> numbers = releases.numbers();
    if (!which.getItems().equals(numbers)) {
      which.getItems().setAll(numbers);
      which.setValue(numbers.stream().findFirst().orElse(null));
    }
    fill();
    Controls.show(compare, !which.getItems().isEmpty());
    Controls.show(changes, !which.getItems().isEmpty());
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().isPresent();
  }
}
