package slabwright.desk.shell;

import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.model.plan.StageStates;

/** The six stages as stops on a line. Nothing is locked: any stop can be gone to. */
final class StageBar extends HBox {
  private final DeskContext bench;
  private final Releases releases;
  private final Map<Stage, StageButton> stops = new EnumMap<>(Stage.class);

  StageBar(DeskContext bench, Releases releases) {
    this.bench = bench;
    this.releases = releases;
    getStyleClass().add("stage-path");
    setAlignment(Pos.CENTER);
    for (Stage stage : Stage.values()) {
      StageButton stop = new StageButton(stage, bench.words(), () -> bench.focus().goTo(stage));
      stops.put(stage, stop);
      getChildren().add(stop);
    }
  }

  void refresh() {
    Stage.State before = Stage.State.DONE;
    for (Stage stage : Stage.values()) {
      Stage.State state = StageStates.of(stage, bench.desk().site(), bench.focus(), releases);
      stops.get(stage).show(state, bench.focus().stage() == stage, before);
      before = state;
    }
  }
}
