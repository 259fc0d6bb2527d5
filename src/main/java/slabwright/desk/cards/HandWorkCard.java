package slabwright.desk.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.Answers;
import slabwright.desk.model.Bench;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandKind;
import slabwright.floor.HandPiece;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;

/** Who grinds what: machine and hand, the hand work by its reason, pockets with Show. */
public final class HandWorkCard extends Card {
  private final Bench bench;
  private final Answers answers;
  private final Places places;
  private final FieldRows rows;
  private Optional<FloorTakeoff> shown = Optional.empty();
  private UnitSystem units = UnitSystem.FEET_INCHES;

  public HandWorkCard(Bench bench, Answers answers, Places places) {
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
    figure("By machine", t.asFound().machine().area());
    for (HandKind kind : HandKind.values()) {
      double area = t.asFound().handArea(kind);
      if (area > 0) {
        figure("Hand: " + kind.word(), area);
      }
    }
    double before = t.asFound().hand().area();
    double after = t.levelled().hand().area();
    if (before - after > 1e4) {
      rows.getChildren()
          .add(
              Finding.look(
                      "Level the trenches first: "
                          + Quantity.area(before - after, units)
                          + " of hand work then goes to the machine.")
                  .row());
    }
    List<HandPiece> pockets = new ArrayList<>(t.asFound().pieces(HandKind.POCKET));
    pockets.sort((a, b) -> Double.compare(b.area(), a.area()));
    pockets.stream()
        .filter(p -> p.area() > 2500)
        .limit(12)
        .forEach(p -> rows.getChildren().add(pocket(p).row()));
  }

  private Finding pocket(HandPiece p) {
    return new Finding(
        Finding.Sign.LOOK,
        "Pocket of " + Quantity.area(p.area(), units) + " out of reach",
        Optional.of(() -> places.show(p.region().bounds())));
  }

  private void figure(String name, double area) {
    rows.figure(name, () -> Quantity.area(area, units));
  }

  @Override
  public boolean refresh() {
    Optional<FloorTakeoff> now = answers.takeoff();
    UnitSystem u = bench.desk().shown().units();
    if (!now.equals(shown) || u != units) {
      shown = now;
      units = u;
      now.ifPresent(this::fill);
    }
    return now.map(t -> !t.area().machines().isEmpty()).orElse(false);
  }
}
