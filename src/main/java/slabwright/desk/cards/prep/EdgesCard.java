package slabwright.desk.cards.prep;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import slabwright.desk.cards.Card;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.shell.Controls;
import slabwright.figures.PrepInks;
import slabwright.floor.CutIn;
import slabwright.floor.EdgeTally;
import slabwright.floor.FloorTakeoff;
import slabwright.site.EdgeClass;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** Edges by what they meet, in the colours of the plan; corners, lines, transitions and cut-in. */
public final class EdgesCard extends Card {
  private final DeskContext bench;
  private final SelectedAreaResults answers;
  private Optional<FloorTakeoff> shown = Optional.empty();
  private UnitSystem units = UnitSystem.FEET_INCHES;

  public EdgesCard(DeskContext bench, SelectedAreaResults answers) {
    super(bench, "edges", bench.words().say("desk.cards.prep.edges.edges"));
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
    EdgeTally tally = t.tally();
    body().getChildren().add(Controls.sentence(corners(tally), "card-words"));
    for (EdgeTally.LineMarks l : tally.lines()) {
      plain(words().say("desk.cards.prep.edges.times", l.kind().label(), l.count()), l.length());
    }
    for (EdgeTally.Meeting m : tally.transitions()) {
      plain(words().say("desk.cards.prep.edges.to", m.below(), m.above()), m.length());
    }
    for (CutIn c : CutIn.values()) {
      plain(words().say("desk.cards.prep.edges.cut-in", c.words()), c.length(t));
    }
  }

  private String corners(EdgeTally tally) {
    int ends = tally.ends().size();
    return words()
        .say(
            "desk.cards.prep.edges.corners",
            tally.corners().inside().size(),
            tally.corners().outside().size(),
            ends);
  }

  private void plain(String words, double length) {
    if (length > 0) {
      Label name = Controls.sentence(words, "row-name");
      HBox.setHgrow(name, Priority.ALWAYS);
      name.setMaxWidth(Double.MAX_VALUE);
      Label figure = Controls.label(QuantityFormat.run(length, units), "figure");
      figure.setMinWidth(Region.USE_PREF_SIZE);
      HBox row = new HBox(name, figure);
      row.setAlignment(Pos.CENTER_LEFT);
      row.setSpacing(10);
      body().getChildren().add(row);
    }
  }

  private HBox row(EdgeClass kind, double length) {
    Region swatch = new Region();
    swatch.getStyleClass().add("edge-swatch");
    swatch.setStyle("-fx-background-color: " + PrepInks.colour(kind).css());
    HBox row =
        new HBox(
            swatch,
            Controls.label(words().say(kind.label()), "row-name"),
            Controls.spring(),
            Controls.label(QuantityFormat.run(length, units), "figure"));
    row.setAlignment(Pos.CENTER_LEFT);
    row.setSpacing(10);
    return row;
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
    return answers.takeoff().isPresent();
  }
}
