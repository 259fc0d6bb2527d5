package slabwright.desk.shell;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import slabwright.desk.model.ProgressMonitor;
import slabwright.words.Words;

/** Says what takes long and how far it is, with a way to give it up. */
public final class ProgressStrip extends HBox {
  private final ProgressMonitor waiting;
  private final Label doing = Controls.label("", "progress-words");
  private final Words words;
  private final ProgressBar bar = new ProgressBar();

  public ProgressStrip(ProgressMonitor waiting, Words words) {
    this.words = words;
    this.waiting = waiting;
    getStyleClass().add("progress-strip");
    setId("progress");
    setAlignment(Pos.CENTER_LEFT);
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    bar.setPrefWidth(170);
    Button cancel =
        Controls.button(words.say("desk.shell.progress-strip.cancel"), "link", this::cancel);
    cancel.setId("cancel-work");
    getChildren().addAll(doing, bar, cancel);
    Controls.show(this, false);
  }

  private void cancel() {
    waiting.shown().ifPresent(ProgressMonitor.ProgressSource::cancel);
  }

  public void refresh() {
    Optional<ProgressMonitor.ProgressSource> now = waiting.shown();
    Controls.show(this, now.isPresent());
    now.ifPresent(
        s -> {
          String said = s.words().map(words::say).orElse("");
          doing.setText(said);
          bar.setAccessibleText(said);
          bar.setProgress(s.share() < 0 ? ProgressBar.INDETERMINATE_PROGRESS : s.share());
        });
  }
}
