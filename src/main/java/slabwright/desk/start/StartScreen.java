package slabwright.desk.start;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import slabwright.desk.model.plan.PlanSketches;
import slabwright.desk.shell.Controls;
import slabwright.desk.shell.Icons;
import slabwright.desk.shell.Scrolled;
import slabwright.words.Words;

/** The empty first screen: ways to begin at the left, plans to go on with at the right. */
public final class StartScreen extends StackPane {
  /** So wide that the ways to begin and the picture stand side by side. */
  private static final double WITH_PICTURE = 1130;

  private final StartActions doors;
  private final Words words;
  private final VBox resume = new VBox();
  private final Map<Path, PlanThumb> left = new HashMap<>();
  private final Map<Path, PlanThumb> saved = new HashMap<>();
  private boolean known;
  private Tone tone = Tone.LIGHT;
  private final StartPicture picture;

  /**
   * A screen.
   *
   * @param notice says why something could not be opened, and what is being opened
   */
  public StartScreen(StartActions doors, Words words, VBox notice) {
    this.doors = doors;
    this.words = words;
    picture = new StartPicture(words);
    getStyleClass().add("start");
    resume.getStyleClass().add("resume");
    StackPane right = new StackPane(picture, new Scrolled(resume));
    right.setAlignment(Pos.TOP_LEFT);
    right.setMinHeight(0);
    HBox halves = new HBox(begin(), right);
    halves.getStyleClass().add("halves");
    halves.setAlignment(Pos.CENTER);
    halves.setMaxHeight(Region.USE_PREF_SIZE);
    notice.setAlignment(Pos.BOTTOM_CENTER);
    notice.setPickOnBounds(false);
    notice.setMaxHeight(Region.USE_PREF_SIZE);
    getChildren().addAll(halves, notice);
    setAlignment(notice, Pos.BOTTOM_CENTER);
    widthProperty().addListener((o, was, is) -> fit());
  }

  private VBox begin() {
    VBox box =
        new VBox(
            Controls.label("Slabwright", "wordmark"),
            Controls.sentence(words.say("desk.start.start-screen.from-a-taped-room-to"), "motto"),
            new StartChoice(
                "start-tape",
                Feather.EDIT_3,
                words.say("desk.start.start-screen.start-by-tape"),
                words.say("desk.start.start-screen.type-each-wall-as-measured"),
                "T",
                doors::byTape),
            new StartChoice(
                "start-trace",
                Feather.IMAGE,
                words.say("desk.start.start-screen.trace-over-a-picture"),
                words.say("desk.start.start-screen.lay-a-photo-or-a"),
                "P",
                doors::byPicture),
            new StartChoice(
                "start-sample",
                Feather.COMPASS,
                words.say("desk.start.start-screen.open-a-sample"),
                words.say("desk.start.start-screen.tram-hall-library-an-invented"),
                "S",
                doors::sample),
            new StartChoice(
                "start-open",
                Feather.FOLDER,
                words.say("desk.start.start-screen.open-a-plan"),
                words.say("desk.start.start-screen.choose-a-plan-file-or"),
                "O",
                doors::choose));
    Button language =
        Controls.button(words.say("desk.app.command.language"), "link", doors.language());
    language.setId("start-language");
    box.getChildren().add(language);
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

  public void setTone(Tone now) {
    tone = now;
    picture.paint(now);
    Stream.of(left, saved).forEach(m -> m.values().forEach(t -> t.setTone(now)));
  }

  /** Draws the plans that are listed, those whose sketch is known. */
  public void draw(PlanSketches.Sketches known) {
    left.forEach((plan, thumb) -> thumb.show(Optional.ofNullable(known.left().get(plan))));
    saved.forEach((plan, thumb) -> thumb.show(Optional.ofNullable(known.saved().get(plan))));
  }

  /** Nothing can be gone on with until it is known what lies on disk. */
  public void forget() {
    show(List.of(), List.of());
    known = false;
    fit();
  }

  /** Lists what can be gone on with. */
  public void show(List<StartEntry> recovered, List<StartEntry> recent) {
    resume.getChildren().clear();
    left.clear();
    saved.clear();
    section(words.say("desk.start.start-screen.not-saved-last-time"), recovered, true);
    section(words.say("desk.start.start-screen.recent-plans"), recent, false);
    Controls.show(resume, !resume.getChildren().isEmpty());
    known = true;
    fit();
  }

  /** The picture is there where it has room, and nothing to go on with. */
  private void fit() {
    boolean room = getWidth() >= WITH_PICTURE;
    Controls.show(picture, known && resume.getChildren().isEmpty() && room);
  }

  private void section(String heading, List<StartEntry> plans, boolean rescued) {
    if (plans.isEmpty()) {
      return;
    }
    resume.getChildren().add(Controls.label(heading, "resume-heading"));
    plans.forEach(p -> resume.getChildren().add(row(p, rescued)));
  }

  private Button row(StartEntry entry, boolean rescued) {
    Path plan = entry.plan();
    Button b =
        Controls.button(
            "", "resume-row", () -> (rescued ? doors.recover() : doors.open()).accept(plan));
    VBox lines =
        new VBox(
            Controls.label(entry.name(), "resume-name"),
            Controls.label(entry.what(), "resume-folder"),
            Controls.label(entry.when(), "resume-folder"));
    b.setId((rescued ? "left-" : "recent-") + resume.getChildren().size());
    PlanThumb thumb = new PlanThumb(tone);
    (rescued ? left : saved).put(plan, thumb);
    HBox row = new HBox(thumb, lines);
    row.getStyleClass().add("resume-line");
    row.setAlignment(Pos.CENTER_LEFT);
    b.setGraphic(row);
    b.setMaxWidth(Double.MAX_VALUE);
    b.setAlignment(Pos.CENTER_LEFT);
    String file = String.valueOf(plan.getFileName());
    String said =
        rescued
            ? words.say("desk.start.start-screen.recover", file)
            : words.say("desk.start.start-screen.open", file);
    return Controls.named(b, said, "");
  }

  /** One large way to begin: what it is and what it is for. */
  private static final class StartChoice extends Button {
    StartChoice(String id, Feather icon, String what, String why, String key, Runnable does) {
      setId(id);
      getStyleClass().setAll("start-choice");
      VBox words = new VBox(Controls.label(what, "choice-what"), Controls.label(why, "choice-why"));
      words.setSpacing(3);
      HBox row = new HBox(Icons.of(icon, 24), words);
      row.setSpacing(18);
      row.setAlignment(Pos.CENTER_LEFT);
      setGraphic(row);
      setMaxWidth(Double.MAX_VALUE);
      setAlignment(Pos.CENTER_LEFT);
      setOnAction(e -> does.run());
      Controls.named(this, what, key);
    }
  }
}
