package slabwright.desk.start;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import slabwright.desk.canvas.Tone;
import slabwright.desk.shell.Controls;
import slabwright.desk.shell.NoticeBar;

/** The empty first screen: ways to begin at the left, plans to go on with at the right. */
public final class StartScreen extends StackPane {
  private final StartActions doors;
  private final VBox resume = new VBox();
  private final StartPicture picture = new StartPicture();

  /**
   * A screen.
   *
   * @param notice says why something could not be opened
   */
  public StartScreen(StartActions doors, NoticeBar notice) {
    this.doors = doors;
    getStyleClass().add("start");
    resume.getStyleClass().add("resume");
    StackPane right = new StackPane(picture, resume);
    right.setAlignment(Pos.TOP_LEFT);
    HBox halves = new HBox(begin(), right);
    halves.getStyleClass().add("halves");
    halves.setAlignment(Pos.CENTER);
    halves.setMaxHeight(Region.USE_PREF_SIZE);
    getChildren().addAll(halves, notice);
    setAlignment(notice, Pos.BOTTOM_CENTER);
  }

  private VBox begin() {
    VBox box =
        new VBox(
            Controls.label("Slabwright", "wordmark"),
            Controls.sentence(
                "From a taped room to net floor, hand work, stencils and printed sheets.", "motto"),
            new StartChoice(
                "start-tape",
                Feather.EDIT_3,
                "Start by tape",
                "Type each wall as measured; the arrow keys turn.",
                "T",
                doors::byTape),
            new StartChoice(
                "start-trace",
                Feather.IMAGE,
                "Trace over a picture",
                "Lay a photo or a PDF page underneath and draw on it.",
                "P",
                doors::byPicture),
            new StartChoice(
                "start-sample",
                Feather.COMPASS,
                "Open a sample",
                "Tram Hall Library, an invented site, all filled in.",
                "S",
                doors::sample),
            new StartChoice(
                "start-open",
                Feather.FOLDER,
                "Open a plan",
                "Choose a plan file, or drop one anywhere on this window.",
                "O",
                doors::choose));
    box.getStyleClass().add("begin");
    HBox.setHgrow(box, Priority.NEVER);
    return box;
  }

  /** A letter of a choice; false when it is none. */
  public boolean key(KeyCode code) {
    switch (code) {
      case T -> doors.byTape();
      case P -> doors.byPicture();
      case S -> doors.sample();
      case O -> doors.choose();
      default -> {
        return false;
      }
    }
    return true;
  }

  public void setTone(Tone tone) {
    picture.paint(tone);
  }

  /** Lists what can be gone on with. */
  public void show(List<Path> recovered, List<Path> recent) {
    resume.getChildren().clear();
    section("Not saved last time", recovered, true);
    section("Recent plans", recent, false);
    Controls.show(resume, !resume.getChildren().isEmpty());
    picture.setVisible(resume.getChildren().isEmpty());
  }

  private void section(String heading, List<Path> plans, boolean rescued) {
    if (plans.isEmpty()) {
      return;
    }
    resume.getChildren().add(Controls.label(heading, "resume-heading"));
    plans.forEach(p -> resume.getChildren().add(row(p, rescued)));
  }

  private Button row(Path plan, boolean rescued) {
    Button b =
        Controls.button(
            "", "resume-row", () -> (rescued ? doors.recover() : doors.open()).accept(plan));
    VBox lines =
        new VBox(
            Controls.label(RecoveredName.of(plan), "resume-name"),
            Controls.label(String.valueOf(plan.getParent()), "resume-folder"));
    b.setGraphic(lines);
    b.setMaxWidth(Double.MAX_VALUE);
    b.setAlignment(Pos.CENTER_LEFT);
    return Controls.named(b, (rescued ? "Recover " : "Open ") + plan.getFileName(), "");
  }
}
