package slabwright.desk.cards.sheets;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.shell.Controls;
import slabwright.site.Release;
import slabwright.site.Site;

/** Issues a numbered release and says what changed since one. */
public final class ReleaseCard extends Card {
  private static final int MOST = 12;

  private final DeskContext bench;
  private final Releases releases;
  private final FieldRows rows;
  private final TextField note = new TextField();
  private final ChoiceBox<Integer> which = new ChoiceBox<>();
  private final HBox compare = new HBox(8);
  private final VBox changes = new VBox(4);
  private List<Object> shown = List.of();

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
    which.valueProperty().addListener((o, was, is) -> fill());
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

  private void fill() {
    changes.getChildren().clear();
    if (which.getValue() == null) {
      return;
    }
    Optional<List<String>> since =
        releases.since(which.getValue()).map(all -> all.stream().map(bench.words()::line).toList());
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
    Site site = bench.desk().site();
    List<Object> now = List.of(site, bench.focus().stage(), releases.graphicChecks());
    if (!now.equals(shown)) {
      shown = now;
      Integer chosen = which.getValue();
      List<Integer> numbers = releases.numbers();
      if (!which.getItems().equals(numbers)) {
        which.getItems().setAll(numbers);
        chosen = null;
      }
      which.setValue(chosen != null ? chosen : numbers.stream().findFirst().orElse(null));
      fill();
    }
    Controls.show(compare, !which.getItems().isEmpty());
    Controls.show(changes, !which.getItems().isEmpty());
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().isPresent();
  }
}
