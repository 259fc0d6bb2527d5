package slabwright.desk.cards.mark;

import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.Clipboard;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.shell.Controls;
import slabwright.shape.Vec;
import slabwright.units.Length;
import slabwright.units.Message;

/** Repeats what is picked at a distance: a row of columns, of booths, of floor boxes. */
public final class RepeatCard extends Card {
  /** More than a floor has of anything in one row. */
  private static final int MOST = 200;

  private final DeskContext bench;
  private final FieldRows rows;
  private int times = 1;
  private Length right = Length.ZERO;
  private Length up = Length.ZERO;

  public RepeatCard(DeskContext bench) {
    super(bench, "repeat", bench.words().say("desk.cards.mark.repeat.title"));
    this.bench = bench;
    rows = new FieldRows(bench);
    rows.number(
            words().say("desk.cards.mark.repeat.times"),
            () -> String.valueOf(times),
            new NumberRange(1, MOST),
            v -> times = Math.toIntExact(Math.round(v)))
        .id("repeat-times");
    rows.length(
            words().say("desk.cards.mark.repeat.right"),
            LengthUse.PLACE,
            () -> right,
            v -> right = v)
        .id("repeat-right");
    rows.length(words().say("desk.cards.mark.repeat.up"), LengthUse.PLACE, () -> up, v -> up = v)
        .id("repeat-up");
    var does =
        Controls.button(words().say("desk.cards.mark.repeat.do"), "soft-button", this::repeat);
    does.setId("repeat-do");
    body().getChildren().addAll(rows, does);
  }

  private void repeat() {
    Vec by = new Vec(right.mm(), up.mm());
    if (by.length() == 0) {
      bench.desk().refuse(Message.of("desk.cards.mark.repeat.how-far"));
      return;
    }
    bench
        .focus()
        .areaOf(bench.desk().site())
        .flatMap(a -> Clipboard.repeat(a, bench.focus(), times, by))
        .ifPresent(
            p -> {
              if (bench.desk().push(p.edit()).isOk()) {
                bench.focus().select(p.picks());
              }
            });
  }

  @Override
  protected void refresh() {
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return bench.focus().selected().stream()
        .anyMatch(p -> p instanceof PlanItem.OfMark || p instanceof PlanItem.OfInlay);
  }
}
