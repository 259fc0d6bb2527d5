package slabwright.desk.cards.prep;

import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PlaceNavigator;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
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
  private final PlaceNavigator places;
  private final FieldRows rows;
  private Optional<FloorTakeoff> shown = Optional.empty();
  private UnitSystem units = UnitSystem.FEET_INCHES;

  public HandWorkCard(DeskContext bench, SelectedAreaResults answers, PlaceNavigator places) {
    super("Machine and hand");
    this.bench = bench;
    this.answers = answers;
    this.places = places;
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
  }

  private void fill(FloorTakeoff t) {
    rows.clear();
    figure("To be ground", t.ground().area());
    List<MachineShare> shares = t.asFound().shares();
    if (shares.size() > 1) {
      shares.forEach(m -> figure("By " + m.machine().name(), m.area()));
    } else {
      figure("By machine", t.asFound().machine().area());
    }
    for (HandWorkKind kind : HandWorkKind.values()) {
      double area = t.asFound().handArea(kind);
      if (area > 0) {
        figure("Hand: " + bench.words().say(kind.word()), area);
      }
    }
    TrenchWork.of(t).forEach(w -> rows.getChildren().add(trench(w).row()));
    double before = t.asFound().hand().area();
    double after = t.levelled().hand().area();
    if (before - after > 1e4) {
      rows.getChildren()
          .add(
              FindingRow.look(
                      "Level the trenches first: "
                          + QuantityFormat.area(before - after, units)
                          + " of hand work then goes to the machine.")
                  .row());
    }
  }

  private FindingRow trench(TrenchWork w) {
    String size =
        w.length().isPresent() && w.width().isPresent()
            ? " "
                + LengthFormat.show(w.length().getAsDouble(), units)
                + " × "
                + LengthFormat.show(w.width().getAsDouble(), units)
            : "";
    String words =
        w.mark().name()
            + ","
            + size
            + ", "
            + QuantityFormat.area(w.area(), units)
            + ", "
            + bench.words().say(w.state())
            + ": "
            + bench.words().say(w.due())
            + ".";
    return new FindingRow(
        w.kind().stopsMachine() ? FindingRow.Sign.LOOK : FindingRow.Sign.FINE,
        words,
        Optional.of(() -> places.show(w.region().bounds())));
  }

  private void figure(String name, double area) {
    rows.figure(name, () -> QuantityFormat.area(area, units));
  }

  @Override
  protected void refresh() {
    Optional<FloorTakeoff> now = answers.takeoff();
    UnitSystem u = bench.desk().shown().units();
    if (!now.equals(shown) || u != units) {
      shown = now;
      units = u;
      now.ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return answers.takeoff().map(t -> !t.area().machines().isEmpty()).orElse(false);
  }
}
