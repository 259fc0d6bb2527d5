package slabwright.desk.cards.measure;

import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.TypedDateTime;
import slabwright.desk.model.DeskContext;
import slabwright.site.edit.SiteEdit;

/** What is printed at the head of every sheet, and when work begins. */
public final class SiteCard extends Card {
  private final FieldRows rows;

  public SiteCard(DeskContext bench) {
    super(bench, "site", bench.words().say("desk.cards.measure.site.site"));
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    rows.freeText(
            words().say("desk.cards.measure.site.name"),
            () -> bench.desk().site().name(),
            v -> {
              if (!v.isEmpty()) {
                bench.desk().push(new SiteEdit.Rename(v));
              }
            })
        .id("site-name-field");
    rows.freeText(
            words().say("desk.cards.measure.site.line-under-it"),
            () -> bench.desk().site().note(),
            v -> bench.desk().push(new SiteEdit.SetNote(v)))
        .id("site-note");
    rows.text(
            words().say("desk.cards.measure.site.work-begins"),
            () -> bench.desk().site().start().map(TypedDateTime::show).orElse(""),
            s ->
                TypedDateTime.read(s)
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
