package slabwright.desk.cards;

import java.util.Optional;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Pick;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkEdit;
import slabwright.site.MarkKind;

/** The picked mark: its name, what its kind says, its sizes. */
public final class MarkCard extends Card {
  private final Bench bench;
  private final FieldRows rows;
  private String shape = "";

  public MarkCard(Bench bench) {
    super("Mark");
    this.bench = bench;
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
  }

  private Optional<Mark> mark() {
    return bench
        .focus()
        .single()
        .filter(Pick.OfMark.class::isInstance)
        .flatMap(p -> bench.focus().area().flatMap(a -> a.mark(((Pick.OfMark) p).id())));
  }

  private void put(Mark m) {
    FloorArea area = bench.focus().area().orElseThrow();
    bench.desk().push(new MarkEdit.Put(area.id(), m));
  }

  void kind(MarkKind kind) {
    mark().ifPresent(m -> put(new Mark(m.id(), m.name(), kind, m.form(), m.follows())));
  }

  void form(Form form) {
    mark().ifPresent(m -> put(m.withForm(form)));
  }

  private void fill(Mark m) {
    title(capital(m.kind().type().word()));
    rows.clear();
    rows.words(
            "Name",
            () -> mark().map(Mark::name).orElse(""),
            v -> mark().ifPresent(x -> put(new Mark(x.id(), v, x.kind(), x.form(), x.follows()))))
        .id("mark-name");
    KindFields.add(rows, () -> mark().map(Mark::kind).orElse(m.kind()), this::kind);
    FormFields.add(rows, () -> mark().map(Mark::form).orElse(m.form()), this::form);
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  @Override
  public boolean refresh() {
    Optional<Mark> m = mark();
    m.ifPresent(
        x -> {
          String now = x.id() + x.kind().type() + x.form().getClass();
          if (!now.equals(shape)) {
            shape = now;
            fill(x);
          }
        });
    if (m.isEmpty()) {
      shape = "";
    }
    rows.refresh();
    return m.isPresent();
  }
}
