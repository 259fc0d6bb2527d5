package slabwright.desk.cards.inlay;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SeamCosts;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.scene.SeamGrip;
import slabwright.desk.shell.Controls;
import slabwright.site.HandSeams;
import slabwright.units.Length;
import slabwright.units.Message;

/** Where the seams run, typed or dragged on the slab, and what that costs above the best. */
public final class SeamsCard extends Card {
  private final SelectedAreaResults answers;
  private final SeamCosts costs;
  private final SelectedInlay inlay;
  private final FieldRows rows;
  private final Button again;
  private int fields = -1;

  public SeamsCard(DeskContext bench, SelectedAreaResults answers, SeamCosts costs) {
    super(bench, "seams", bench.words().say("desk.cards.inlay.seams.seams"));
    this.answers = answers;
    this.costs = costs;
    this.inlay = new SelectedInlay(bench);
    this.rows = new FieldRows(bench);
    this.again =
        Controls.button(words().say("desk.cards.inlay.seams.best-again"), "link", this::best);
    again.setId("best-seams");
    Controls.named(again, words().say("desk.cards.inlay.seams.put-the-seams-back-where"), "");
    beside(again);
    body().getChildren().add(rows);
  }

  private Optional<SeamGrip> grip() {
    return inlay.now().flatMap(i -> answers.inlay(i.id()).flatMap(a -> SeamGrip.of(a, i)));
  }

  private List<Length> places() {
    return grip().map(g -> g.seams().places()).orElse(List.of());
  }

  private void fill(int count) {
    fields = count;
    rows.clear();
    rows.sentence(this::standing, "card-words");
    for (int i = 0; i < count; i++) {
      int seam = i;
      rows.length(
              count == 1
                  ? words().say("desk.cards.inlay.seams.seam")
                  : words().say("desk.cards.inlay.seams.seam-2", i + 1),
              LengthUse.PLACE,
              () -> seam < places().size() ? places().get(seam) : Length.ZERO,
              v -> move(seam, v))
          .id("seam-" + (i + 1))
          .steps((by, coarse) -> step(seam, by, coarse));
    }
    rows.sentence(
        () ->
            isAcross()
                ? words().say("desk.cards.inlay.seams.from-the-top")
                : words().say("desk.cards.inlay.seams.from-the-left"),
        "card-hint");
  }

  private boolean isAcross() {
    return grip().map(g -> g.seams().strips() == HandSeams.Strips.ACROSS).orElse(false);
  }

  private String standing() {
    if (!isByHand()) {
      return words().say("desk.cards.inlay.seams.where-they-cost-least");
    }
    return inlay
        .now()
        .flatMap(i -> costs.bill(i.id()))
        .map(b -> words().say("desk.cards.inlay.seams.set-by-hand", b.inFull()))
        .orElseGet(() -> words().say("desk.cards.inlay.seams.weighing"));
  }

  private boolean isByHand() {
    return inlay.now().flatMap(i -> i.spec().changes().seams()).isPresent();
  }

  private void move(int seam, Length to) {
    grip()
        .ifPresent(
            g ->
                inlay.cut(
                    Message.of("desk.cards.inlay.seams.move-seam"),
                    s -> s.withChanges(s.changes().withSeams(Optional.of(g.moved(seam, to))))));
  }

  /** One nudge up or down, on the blank. */
  private void step(int seam, int by, boolean coarse) {
    double mm = by * NudgeStep.mm(rows.units(), coarse);
    move(seam, Length.mm(places().get(seam).mm() + mm));
  }

  private void best() {
    inlay.cut(
        Message.of("desk.cards.inlay.seams.best-seams"),
        s -> s.withChanges(s.changes().withSeams(Optional.empty())));
  }

  @Override
  protected void refresh() {
    int count = places().size();
    if (count != fields) {
      fill(count);
    }
    Controls.show(again, isByHand());
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return inlay.now().isPresent() && (!places().isEmpty() || isByHand());
  }
}
