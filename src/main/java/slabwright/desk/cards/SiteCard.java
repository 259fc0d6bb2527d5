package slabwright.desk.cards;

import slabwright.desk.model.Bench;
import slabwright.site.SiteEdit;

/** What is printed at the head of every sheet: the site's name and the line under it. */
public final class SiteCard extends Card {
  private final FieldRows rows;

  public SiteCard(Bench bench) {
    super("Site");
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
    rows.words(
            "Name",
            () -> bench.desk().site().name(),
            v -> {
              if (!v.isEmpty()) {
                bench.desk().push(new SiteEdit.Rename(v));
              }
            })
        .id("site-name-field");
    rows.words(
            "Line under it",
            () -> bench.desk().site().note(),
            v -> bench.desk().push(new SiteEdit.SetNote(v)))
        .id("site-note");
  }

  @Override
  public boolean refresh() {
    rows.refresh();
    return true;
  }
}
