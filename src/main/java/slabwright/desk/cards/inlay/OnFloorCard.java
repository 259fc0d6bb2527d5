package slabwright.desk.cards.inlay;

import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.masking.Masking;
import slabwright.units.QuantityFormat;

/** What the inlay needs on the floor. */
public final class OnFloorCard extends Card {
  private final SelectedAreaResults answers;
  private final SelectedInlay inlay;
  private final FieldRows rows;

  public OnFloorCard(DeskContext bench, SelectedAreaResults answers) {
    super(bench, "on-the-floor", bench.words().say("desk.cards.inlay.on-floor.on-the-floor"));
    this.answers = answers;
    this.inlay = new SelectedInlay(bench);
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    rows.figure(
        words().say("desk.cards.inlay.on-floor.dyed"),
        () -> area(plan().map(InlayPlan::openingArea)));
    rows.figure(
        words().say("desk.cards.inlay.on-floor.press-band"),
        () -> area(plan().map(InlayPlan::pressBandArea)));
    rows.figure(
        words().say("desk.cards.inlay.on-floor.skirt-of-paper"),
        () -> area(plan().map(InlayPlan::skirtArea)));
    rows.figure(words().say("desk.cards.inlay.on-floor.upright-masking"), this::upright);
    rows.figure(
        words().say("desk.cards.inlay.on-floor.loose-pieces"),
        () -> plan().map(p -> p.loosePieces() + "").orElse("–"));
  }

  private Optional<InlayPlan> plan() {
    return inlay.now().flatMap(i -> answers.inlay(i.id())).flatMap(ComputedInlay::plan);
  }

  private String area(Optional<Double> mm2) {
    return mm2.map(v -> QuantityFormat.area(v, rows.units())).orElse("–");
  }

  private String upright() {
    int n = plan().flatMap(InlayPlan::masking).map(Masking::upright).map(u -> u.size()).orElse(0);
    return words().say("desk.cards.inlay.on-floor.upright", n);
  }

  @Override
  protected void refresh() {
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return plan().isPresent();
  }
}
