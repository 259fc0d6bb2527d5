package slabwright.desk.cards;

import java.util.Optional;
import slabwright.desk.model.Answers;
import slabwright.desk.model.Bench;
import slabwright.desk.model.InlayAnswer;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.masking.Masking;
import slabwright.units.Quantity;

/** What the inlay needs on the floor. */
public final class OnFloorCard extends Card {
  private final Answers answers;
  private final PickedInlay inlay;
  private final FieldRows rows;

  public OnFloorCard(Bench bench, Answers answers) {
    super("On the floor");
    this.answers = answers;
    this.inlay = new PickedInlay(bench);
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
    rows.figure("Dyed", () -> area(plan().map(InlayPlan::openingArea)));
    rows.figure("Press band", () -> area(plan().map(InlayPlan::pressBandArea)));
    rows.figure("Skirt of paper", () -> area(plan().map(InlayPlan::skirtArea)));
    rows.figure("Upright masking", this::upright);
    rows.figure("Loose pieces", () -> plan().map(p -> p.loosePieces() + "").orElse("–"));
  }

  private Optional<InlayPlan> plan() {
    return inlay.now().flatMap(i -> answers.inlay(i.id())).flatMap(InlayAnswer::plan);
  }

  private String area(Optional<Double> mm2) {
    return mm2.map(v -> Quantity.area(v, rows.units())).orElse("–");
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
