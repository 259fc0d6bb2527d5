package slabwright.desk.cards.measure;

import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.shell.Controls;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Spot;
import slabwright.site.edit.OutlineEdit;
import slabwright.tape.CornerName;
import slabwright.units.QuantityFormat;

/** The picked corner: its place from the site's zero point and the angle between its walls. */
public final class CornerCard extends Card {
  private final DeskContext bench;
  private final FieldRows rows;

  public CornerCard(DeskContext bench) {
    super(bench, "corner", bench.words().say("desk.cards.measure.corner.corner"));
    this.bench = bench;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    rows.length(
            words().say("desk.cards.measure.corner.right-of"),
            LengthUse.PLACE,
            () -> spot().x(),
            v -> move(new Spot(v, spot().y())))
        .id("corner-x");
    rows.length(
            words().say("desk.cards.measure.corner.up-from"),
            LengthUse.PLACE,
            () -> spot().y(),
            v -> move(new Spot(spot().x(), v)))
        .id("corner-y");
    rows.figure(words().say("desk.cards.measure.corner.between-walls"), this::angle);
    var away =
        Controls.button(
            words().say("desk.cards.measure.corner.leave-this-corner-out"), "link", this::leaveOut);
    away.setId("corner-away");
    body().getChildren().add(away);
  }

  private Optional<Integer> corner() {
    return bench
        .focus()
        .single()
        .filter(PlanItem.OfCorner.class::isInstance)
        .map(p -> ((PlanItem.OfCorner) p).index())
        .filter(i -> bench.focus().area().map(a -> i < a.outline().size()).orElse(false));
  }

  private FloorArea area() {
    return bench.focus().area().orElseThrow();
  }

  private Spot spot() {
    return corner().map(i -> area().outline().get(i).from()).orElse(Spot.mm(0, 0));
  }

  private String angle() {
    return corner()
        .map(
            i -> {
              List<Vec> all = area().outline().stream().map(p -> p.from().vec()).toList();
              Vec before = all.get((i + all.size() - 1) % all.size()).minus(all.get(i));
              Vec after = all.get((i + 1) % all.size()).minus(all.get(i));
              double turn = Math.toDegrees(Math.acos(cosine(before, after)));
              return QuantityFormat.number(turn, 1) + "°";
            })
        .orElse("");
  }

  private static double cosine(Vec a, Vec b) {
    return Math.max(-1, Math.min(1, a.unit().dot(b.unit())));
  }

  private void move(Spot to) {
    corner().ifPresent(i -> bench.desk().push(new OutlineEdit.MoveCorner(area().id(), i, to)));
  }

  private void leaveOut() {
    corner().ifPresent(i -> bench.desk().push(new OutlineEdit.RemoveCorner(area().id(), i)));
  }

  @Override
  protected void refresh() {
    rows.refresh();
  }

  @Override
  protected String title() {
    return corner()
        .map(i -> words().say("desk.cards.measure.corner.corner-2", CornerName.of(i)))
        .orElseGet(super::title);
  }

  @Override
  public boolean isWanted() {
    return corner().isPresent();
  }
}
