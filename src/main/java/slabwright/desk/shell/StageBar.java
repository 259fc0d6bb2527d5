package slabwright.desk.shell;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.model.plan.Releases;

/** The six stages as stops on a line. Nothing is locked: any stop can be gone to. */
final class StageBar extends HBox {
  /** So many open questions a stage's tooltip says. */
  private static final int MOST = 6;

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

  /** What a stage asks, in a few lines. */
  private String asked(List<OpenQuestion> here) {
    return here.stream()
        .limit(MOST)
        .map(q -> "\n! " + bench.words().say(q.what()))
        .collect(Collectors.joining());
  }

  void refresh(List<OpenQuestion> open) {
    Stage.State before = Stage.State.DONE;
    for (Stage stage : Stage.values()) {
      List<OpenQuestion> here = open.stream().filter(q -> q.stage() == stage).toList();
      Stage.State begun = StageStates.of(stage, bench.desk().site(), bench.focus(), releases);
      boolean asks = begun == Stage.State.DONE && !here.isEmpty();
      Stage.State state = asks ? Stage.State.NEEDS_A_LOOK : begun;
      stops.get(stage).show(state, bench.focus().stage() == stage, before, asked(here));
      before = state;
    }
  }
}
