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
    super("On the floor");
    this.answers = answers;
    this.inlay = new SelectedInlay(bench);
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
    rows.figure("Dyed", () -> area(plan().map(InlayPlan::openingArea)));
    rows.figure("Press band", () -> area(plan().map(InlayPlan::pressBandArea)));
    rows.figure("Skirt of paper", () -> area(plan().map(InlayPlan::skirtArea)));
    rows.figure("Upright masking", this::upright);
    rows.figure("Loose pieces", () -> plan().map(p -> p.loosePieces() + "").orElse("–"));
  }

  private Optional<InlayPlan> plan() {
    return inlay.now().flatMap(i -> answers.inlay(i.id())).flatMap(ComputedInlay::plan);
  }

  private String area(Optional<Double> mm2) {
    return mm2.map(v -> QuantityFormat.area(v, rows.units())).orElse("–");
  }

  private String upright() {
    int n = plan().flatMap(InlayPlan::masking).map(Masking::upright).map(u -> u.size()).orElse(0);
    return n == 0 ? "none" : n + (n == 1 ? " place" : " places");
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
