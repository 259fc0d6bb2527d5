package slabwright.desk.cards.mark;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.PlainNames;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.edit.MarkEdit;
import slabwright.tape.CornerName;

/** The picked mark: its name, what its kind says, its sizes. */
public final class MarkCard extends Card {
  private final DeskContext bench;
  private final FieldRows rows;
  private String shape = "";

  public MarkCard(DeskContext bench) {
    super(bench, "mark", bench.words().say("desk.cards.mark.mark.mark"));
    this.bench = bench;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
  }

  private Optional<Mark> mark() {
    return bench
        .focus()
        .single()
        .filter(PlanItem.OfMark.class::isInstance)
        .flatMap(p -> bench.focus().area().flatMap(a -> a.mark(((PlanItem.OfMark) p).id())));
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
    rows.clear();
    rows.freeText(
            words().say("desk.cards.mark.mark.name"),
            () -> mark().map(Mark::name).orElse(""),
            v -> mark().ifPresent(x -> rename(x, v)))
        .id("mark-name");
    KindFields.add(rows, () -> mark().map(Mark::kind).orElse(m.kind()), this::kind);
    follows();
    FormFields.add(
        rows, m.kind().type(), () -> mark().map(Mark::form).orElse(m.form()), this::form);
  }

  /** A name that is left empty becomes a plain one. */
  private void rename(Mark m, String name) {
    Optional<FloorArea> area = bench.focus().areaOf(bench.desk().site());
    String said =
        name.isBlank() && area.isPresent()
            ? PlainNames.next(area.get(), m.kind().type(), 0, words())
            : name;
    put(new Mark(m.id(), said, m.kind(), m.form(), m.follows()));
  }

  /** Which wall it was measured from; when that wall moves the mark goes along. */
  private void follows() {
    int walls = bench.focus().area().map(a -> a.outline().size()).orElse(0);
    rows.choice(
            words().say("desk.cards.mark.mark.moves-with"),
            IntStream.range(-1, walls).boxed().toList(),
            w ->
                w < 0
                    ? words().say("desk.cards.mark.mark.no-wall")
                    : words().say("desk.cards.mark.mark.wall", CornerName.wall(w, walls)),
            () -> mark().map(Mark::follows).orElse(OptionalInt.empty()).orElse(-1),
            w -> mark().ifPresent(m -> put(m, w < 0 ? OptionalInt.empty() : OptionalInt.of(w))))
        .setId("mark-follows");
  }

  private void put(Mark m, OptionalInt follows) {
    put(new Mark(m.id(), m.name(), m.kind(), m.form(), follows));
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  /** What decides which rows there are. */
  private String shape(Mark m) {
    int walls = bench.focus().area().map(a -> a.outline().size()).orElse(0);
    int points = m.form().spots().size();
    String lies = m.kind() instanceof MarkKind.Trench t ? t.lie().name() : "";
    return m.id() + m.kind().type() + lies + m.form().getClass() + points + "/" + walls;
  }

  @Override
  protected void refresh() {
    Optional<Mark> m = mark();
    m.ifPresent(
        x -> {
          String now = shape(x);
          if (!now.equals(shape)) {
            shape = now;
            fill(x);
          }
        });
    if (m.isEmpty()) {
      shape = "";
    }
    rows.refresh();
  }

  @Override
  protected String title() {
    return mark().map(m -> capital(words().say(m.kind().type().label()))).orElseGet(super::title);
  }

  @Override
  public boolean isWanted() {
    return mark().isPresent();
  }
}
