package slabwright.desk.cards;

import java.util.List;
import javafx.scene.control.TextField;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Releases;
import slabwright.desk.shell.Controls;
import slabwright.site.Release;

/** Issues a numbered release and says what changed since the last. */
public final class ReleaseCard extends Card {
  private final Bench bench;
  private final Releases releases;
  private final FieldRows rows;
  private final TextField note = new TextField();

  public ReleaseCard(Bench bench, Releases releases) {
    super("Release");
    this.bench = bench;
    this.releases = releases;
    rows = new FieldRows(bench.desk());
    rows.figure("Last issued", this::last);
    rows.sentence(this::since, "card-words");
    note.setPromptText("Note, such as: sent to the client");
    note.setId("release-note");
    note.setAccessibleText("Note of the release");
    var issue = Controls.button("Issue release", "soft-button", this::issue);
    issue.setId("issue");
    issue.setMaxWidth(Double.MAX_VALUE);
    body().getChildren().addAll(rows, note, issue);
  }

  private String last() {
    List<Release> all = bench.desk().site().releases();
    if (all.isEmpty()) {
      return "none yet";
    }
    Release r = all.get(all.size() - 1);
    return r.number() + " on " + r.issued();
  }

  private String since() {
    List<String> changes = releases.since();
    return changes.isEmpty() ? "" : "Since then: " + String.join(", ", changes) + ".";
  }

  private void issue() {
    releases.issue(note.getText().strip());
    note.clear();
  }

  @Override
  public boolean refresh() {
    rows.refresh();
    return bench.focus().area().isPresent();
  }
}
