package slabwright.desk.cards.prep;

import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PlaceNavigator;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.compute.SelectedAreaWarnings;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandWorkKind;
import slabwright.floor.MachineShare;
import slabwright.floor.TrenchWork;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** Who grinds what: each machine, and the hand work by its reason; each trench with Show. */
public final class HandWorkCard extends Card {
  private final DeskContext bench;
  private final SelectedAreaResults answers;
  private final SelectedAreaWarnings said;
  private final PlaceNavigator places;
  private final FieldRows rows;
  private Optional<FloorTakeoff> shown = Optional.empty();
  private List<TrenchWork> trenches = List.of();
  private UnitSystem units = UnitSystem.FEET_INCHES;

  public HandWorkCard(
      DeskContext bench,
      SelectedAreaResults answers,
      SelectedAreaWarnings said,
      PlaceNavigator places) {
    super(
        bench, "machine-and-hand", bench.words().say("desk.cards.prep.hand-work.machine-and-hand"));
    this.bench = bench;
    this.answers = answers;
    this.said = said;
    this.places = places;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
  }

  private void fill(FloorTakeoff t) {
    rows.clear();
    figure(
        t.isGrindingChosen()
            ? words().say("desk.cards.prep.hand-work.to-be-ground")
            : words().say("desk.cards.prep.hand-work.if-ground"),
        t.ground().area());
    List<MachineShare> shares = t.asFound().shares();
    if (shares.size() > 1) {
      shares.forEach(
          m -> figure(words().say("desk.cards.prep.hand-work.by", m.machine().name()), m.area()));
    } else {
      figure(words().say("desk.cards.prep.hand-work.by-machine"), t.asFound().machine().area());
    }
    for (HandWorkKind kind : HandWorkKind.values()) {
      double area = t.asFound().handArea(kind);
      if (area > 0) {
        figure(words().say("desk.cards.prep.hand-work.hand", kind.word()), area);
      }
    }
    trenches.forEach(w -> rows.getChildren().add(trench(w).row(words())));
    double before = t.asFound().hand().area();
    double after = t.levelled().hand().area();
    if (before - after > 1e4) {
      rows.getChildren()
          .add(
              FindingRow.look(
                      words()
                          .say(
                              "desk.cards.prep.hand-work.level-the-trenches-first-of",
                              QuantityFormat.area(before - after, units)))
                  .row(words()));
    }
  }

  private FindingRow trench(TrenchWork w) {
    String area = QuantityFormat.area(w.area(), units);
    String said =
        w.length().isPresent() && w.width().isPresent()
            ? words()
                .say(
                    "desk.cards.prep.hand-work.trench-sized",
                    w.mark().name(),
                    LengthFormat.show(w.length().getAsDouble(), units),
                    LengthFormat.show(w.width().getAsDouble(), units),
                    area,
                    w.state(),
                    w.due())
            : words()
                .say("desk.cards.prep.hand-work.trench", w.mark().name(), area, w.state(), w.due());
    return new FindingRow(
        w.kind().stopsMachine() ? FindingRow.Sign.LOOK : FindingRow.Sign.FINE,
        said,
        Optional.of(() -> places.show(w.region().bounds())));
  }

  private void figure(String name, double area) {
    rows.figure(name, () -> QuantityFormat.area(area, units));
  }

  @Override
  protected void refresh() {
    Optional<FloorTakeoff> now = answers.takeoff();
    UnitSystem u = bench.desk().shown().units();
    if (!now.equals(shown) || u != units || !trenches.equals(said.trenches())) {
      shown = now;
      trenches = said.trenches();
      units = u;
      now.ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return answers.takeoff().map(t -> !t.area().machines().isEmpty()).orElse(false);
  }
}
