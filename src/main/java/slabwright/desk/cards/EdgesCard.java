package slabwright.desk.cards;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import slabwright.desk.model.Answers;
import slabwright.desk.model.Bench;
import slabwright.desk.model.PrepInks;
import slabwright.desk.shell.Controls;
import slabwright.floor.FloorTakeoff;
import slabwright.site.EdgeClass;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;

/** Where the floor ends, class by class, in the colours of the plan. */
public final class EdgesCard extends Card {
  private final Bench bench;
  private final Answers answers;
  private Optional<FloorTakeoff> shown = Optional.empty();
  private UnitSystem units = UnitSystem.FEET_INCHES;

  public EdgesCard(Bench bench, Answers answers) {
    super("Edges");
    this.bench = bench;
    this.answers = answers;
  }

  private void fill(FloorTakeoff t) {
    body().getChildren().clear();
    for (EdgeClass kind : EdgeClass.values()) {
      double length = t.edgeLength(kind);
      if (length > 0) {
        body().getChildren().add(row(kind, length));
      }
    }
    String cut = "Cut-in " + Quantity.run(t.cutIn(), units) + ": without doorways and open edges.";
    body().getChildren().add(Controls.sentence(cut, "card-hint"));
  }

  private HBox row(EdgeClass kind, double length) {
    Region swatch = new Region();
    swatch.getStyleClass().add("edge-swatch");
    swatch.setStyle("-fx-background-color: " + PrepInks.colour(kind).css());
    HBox row =
        new HBox(
            swatch,
            Controls.label(kind.word(), "row-name"),
            Controls.spring(),
            Controls.label(Quantity.run(length, units), "figure"));
    row.setAlignment(Pos.CENTER_LEFT);
    row.setSpacing(10);
    return row;
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
    return now.isPresent();
  }
}
