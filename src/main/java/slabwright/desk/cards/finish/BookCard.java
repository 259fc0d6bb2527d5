package slabwright.desk.cards.finish;

import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.plan.ShopBookEditor;
import slabwright.desk.shell.Controls;
import slabwright.units.Result;
import slabwright.work.book.BookField;
import slabwright.work.book.BookForm;

/**
 * The shop book as a form: one section at a time, every value as it is written with its unit, the
 * comment beside it as its source, and what is not there by name. A change is written at once.
 */
public final class BookCard extends Card {
  private static final int MOST_FAULTS = 6;

  private final ShopBookEditor keeper;
  private final FieldRows rows;
  private String section = "crew";
  private List<Object> shown = List.of();

  public BookCard(DeskContext bench, ShopBookEditor keeper) {
    super(bench, "shop-book", bench.words().say("desk.cards.finish.book.shop-book"));
    this.keeper = keeper;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
  }

  private void fill(BookForm form) {
    rows.clear();
    rows.getChildren()
        .add(
            Controls.sentence(
                words().say("desk.cards.finish.book.from", keeper.place()), "card-hint"));
    form.faults().stream()
        .limit(MOST_FAULTS)
        .forEach(
            f ->
                rows.getChildren()
                    .add(
                        FindingRow.look(
                                words()
                                    .say("desk.cards.finish.book.in-line", f.line(), f.sentence()))
                            .row(words())));
    String missing = words().say("desk.cards.finish.book.values-missing", form.missing());
    rows.getChildren().add(Controls.sentence(missing, "card-hint"));
    List<String> labels = form.sections().stream().map(BookForm.Section::label).toList();
    rows.choice(
            words().say("desk.cards.finish.book.section"),
            labels,
            s -> s,
            () -> section,
            this::show)
        .setId("book-section");
    form.sections().stream()
        .filter(s -> s.label().equals(section))
        .flatMap(s -> s.fields().stream())
        .forEach(this::field);
  }

  private void show(String label) {
    section = label;
    refresh();
  }

  private void field(BookField f) {
    rows.text(f.key(), () -> now(f).map(BookField::value).orElse(""), v -> set(f, v))
        .wide()
        .id("book-" + f.key().replace(' ', '-'));
    rows.getChildren().add(Controls.sentence(hint(f), "card-hint"));
  }

  private Result<?> set(BookField f, String value) {
    return keeper.set(now(f).orElse(f), value);
  }

  private Optional<BookField> now(BookField f) {
    return keeper.form().flatMap(b -> b.field(f.kind(), f.section(), f.key()));
  }

  private String hint(BookField f) {
    if (f.isMissing()) {
      return words().say("desk.cards.finish.book.hint-missing", f.example());
    }
    return f.comment().isEmpty()
        ? words().say("desk.cards.finish.book.hint-without-source", f.example())
        : words().say("desk.cards.finish.book.hint", f.example(), f.comment());
  }

  @Override
  protected void refresh() {
    Optional<BookForm> form = keeper.form();
    List<Object> now =
        List.of(form.map(BookForm::faults), form.map(BookForm::missing), keeper.place(), section);
    if (!now.equals(shown)) {
      shown = now;
      form.ifPresent(this::fill);
    }
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return keeper.form().isPresent();
  }
}
