package slabwright.desk.cards.mark;

import java.util.function.Consumer;
import java.util.function.Supplier;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.input.LengthUse;
import slabwright.site.Form;
import slabwright.units.Length;
import slabwright.units.QuantityFormat;

/** Sizes and turn of a rectangle or a round-ended form. */
final class BoxFields {
  private final FieldRows rows;
  private final Supplier<Form> now;
  private final Consumer<Form> set;
  private final LengthUse use;

  /**
   * Fields of a form.
   *
   * @param use what its sides are
   */
  BoxFields(FieldRows rows, LengthUse use, Supplier<Form> now, Consumer<Form> set) {
    this.use = use;
    this.rows = rows;
    this.now = now;
    this.set = set;
  }

  void rectangle() {
    rows.length(
            rows.words().say("desk.cards.mark.box-fields.length"),
            use,
            () -> rect().length(),
            v -> rect(v, rect().width(), rect().corner()))
        .id("mark-length");
    rows.length(
            rows.words().say("desk.cards.mark.box-fields.width"),
            use,
            () -> rect().width(),
            v -> rect(rect().length(), v, rect().corner()))
        .id("mark-width");
    rows.length(
            rows.words().say("desk.cards.mark.box-fields.round-corners"),
            LengthUse.MARGIN,
            () -> rect().corner(),
            v -> rect(rect().length(), rect().width(), v))
        .id("mark-round");
    turn(
        () -> rect().turn(),
        v ->
            set.accept(
                new Form.Rectangle(
                    rect().middle(), rect().length(), rect().width(), rect().corner(), v)));
  }

  private Form.Rectangle rect() {
    return (Form.Rectangle) now.get();
  }

  private void rect(Length length, Length width, Length corner) {
    set.accept(new Form.Rectangle(rect().middle(), length, width, corner, rect().turn()));
  }

  private Form.RoundEnded ended() {
    return (Form.RoundEnded) now.get();
  }

  private void ended(Length length, Length width, double turn) {
    set.accept(new Form.RoundEnded(ended().middle(), length, width, turn));
  }

  void roundEnded() {
    rows.length(
            rows.words().say("desk.cards.mark.box-fields.length-over-all"),
            use,
            () -> ended().length(),
            v -> ended(v, ended().width(), ended().turn()))
        .id("mark-length");
    rows.length(
            rows.words().say("desk.cards.mark.box-fields.width"),
            use,
            () -> ended().width(),
            v -> ended(ended().length(), v, ended().turn()))
        .id("mark-width");
    turn(() -> ended().turn(), v -> ended(ended().length(), ended().width(), v));
  }

  private void turn(Supplier<Double> get, Consumer<Double> put) {
    rows.number(
            rows.words().say("desk.cards.mark.box-fields.turn"),
            () -> QuantityFormat.number(get.get(), get.get() % 1 == 0 ? 0 : 1) + "°",
            new NumberRange(-360, 360),
            put)
        .id("mark-turn");
  }
}
