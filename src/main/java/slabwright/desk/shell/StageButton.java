package slabwright.desk.shell;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import slabwright.desk.model.Stage;
import slabwright.words.Words;

/** One stop on the path: a disc with its state, the track on both sides, its word below. */
final class StageButton extends ToggleButton {
  private static final PseudoClass DONE = PseudoClass.getPseudoClass("done");
  private static final PseudoClass LOOK = PseudoClass.getPseudoClass("look");

  private final StackPane disc = new StackPane();
  private final Region before = new Region();
  private final Region after = new Region();
  private final Label word;
  private final Stage stage;
  private final Words words;
  private Optional<Stage.State> shown = Optional.empty();

  StageButton(Stage stage, Words words, Runnable go) {
    this.stage = stage;
    this.words = words;
    setId("stage-" + stage.name());
    getStyleClass().setAll("stage-stop");
    disc.getStyleClass().add("disc");
    before.getStyleClass().addAll("track");
    after.getStyleClass().addAll("track");
    word = new Label(words.say(stage.word()));
    word.getStyleClass().add("word");
    setGraphic(stacked());
    setOnAction(
        e -> {
          setSelected(true);
          go.run();
        });
  }

  private VBox stacked() {
    StackPane line = new StackPane(before, after, disc);
    StackPane.setAlignment(before, Pos.CENTER_LEFT);
    StackPane.setAlignment(after, Pos.CENTER_RIGHT);
    before.maxWidthProperty().bind(line.widthProperty().divide(2).subtract(12));
    after.maxWidthProperty().bind(line.widthProperty().divide(2).subtract(12));
    before.setVisible(stage != Stage.MEASURE);
    after.setVisible(stage != Stage.SHEETS);
    line.getStyleClass().add("stop-line");
    VBox box = new VBox(line, word);
    box.setAlignment(Pos.CENTER);
    box.setSpacing(4);
    return box;
  }

  /**
   * Shows how far the stage has come.
   *
   * @param reached state of the stage before
   * @param asks what it still asks, empty for nothing
   */
  void show(Stage.State state, boolean here, Stage.State reached, String asks) {
    setSelected(here);
    pseudoClassStateChanged(DONE, state == Stage.State.DONE);
    pseudoClassStateChanged(LOOK, state == Stage.State.NEEDS_A_LOOK);
    track(before, reached != Stage.State.NOT_STARTED && state != Stage.State.NOT_STARTED);
    track(after, state != Stage.State.NOT_STARTED);
    if (!shown.equals(Optional.of(state))) {
      shown = Optional.of(state);
      disc.getChildren().setAll(sign(state));
    }
    Controls.named(this, said(state) + (state == Stage.State.NOT_STARTED ? "" : asks), stage.key());
  }

  private static void track(Region r, boolean laid) {
    r.pseudoClassStateChanged(DONE, laid);
  }

  private static javafx.scene.Node sign(Stage.State state) {
    return switch (state) {
      case DONE -> Icons.of(Feather.CHECK, 13);
      case NEEDS_A_LOOK -> Controls.label("!", "sign");
      case NOT_STARTED -> new Region();
    };
  }

  private String said(Stage.State state) {
    return switch (state) {
      case DONE -> words.say("desk.shell.stage-button.done", stage.word());
      case NEEDS_A_LOOK -> words.say("desk.shell.stage-button.needs-a-look", stage.word());
      case NOT_STARTED -> words.say("desk.shell.stage-button.not-started", stage.word());
    };
  }
}
