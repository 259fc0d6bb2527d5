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
    super("Release");
    this.bench = bench;
    this.releases = releases;
    rows = new FieldRows(bench.desk());
    rows.figure("Last issued", this::last);
    note.setPromptText("Note, such as: sent to the client");
    note.setId("release-note");
    note.setAccessibleText("Note of the release");
    var issue = Controls.button("Issue release", "soft-button", this::issue);
    issue.setId("issue");
    issue.setMaxWidth(Double.MAX_VALUE);
    which.setId("since-release");
    which.setAccessibleText("What changed since release");
    which.valueProperty().addListener((o, was, is) -> fill());
    compare.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    compare.getChildren().setAll(Controls.label("Changed since release", "row-name"), which);
    changes.setId("changes");
    body().getChildren().addAll(rows, compare, changes, note, issue);
  }

  private String last() {
    List<Release> all = bench.desk().site().releases();
    if (all.isEmpty()) {
      return "none yet";
    }
    Release r = all.get(all.size() - 1);
    return r.number() + " on " + r.issued();
  }

  private void fill() {
    changes.getChildren().clear();
    if (which.getValue() == null) {
      return;
    }
    Optional<List<String>> since =
        releases.since(which.getValue()).map(all -> all.stream().map(bench.words()::say).toList());
    if (since.isEmpty()) {
      say(FindingRow.look("Its frozen copy is not beside the plan, so this can't be told."));
    } else if (since.get().isEmpty()) {
      say(FindingRow.fine("Nothing changed; sheets and cut files carry the release."));
    } else {
      say(FindingRow.look("Sheets and cut files say draft until the next release."));
      since.get().stream().limit(MOST).forEach(this::change);
      if (since.get().size() > MOST) {
        change("and " + (since.get().size() - MOST) + " more");
      }
    }
  }

  private void say(FindingRow f) {
    changes.getChildren().add(f.row());
  }

  private void change(String words) {
    changes.getChildren().add(Controls.sentence("· " + words, "card-words", "change"));
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
