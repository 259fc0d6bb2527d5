package slabwright.desk.cards.measure;

import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.TypedDateTime;
import slabwright.site.edit.SiteEdit;

/** What is printed at the head of every sheet, and when work begins. */
public final class SiteCard extends Card {
  private final FieldRows rows;

  public SiteCard(DeskContext bench) {
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
    rows.text(
            "Work begins",
            () -> bench.desk().site().start().map(TypedDateTime::show).orElse(""),
            s ->
                bench
                    .words()
                    .parsed(TypedDateTime.read(s))
                    .map(v -> rows.taken(v, w -> bench.desk().push(new SiteEdit.SetStart(w)))))
        .wide()
        .id("site-start");
  }

  @Override
  protected void refresh() {
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return true;
  }
}
