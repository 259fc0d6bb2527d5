package slabwright.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import javafx.application.Application;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Font;
import javafx.stage.Stage;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.DeskSettings;
import slabwright.drawing.FontFace;
import slabwright.words.Words;

/** The window: the start screen or the workroom, in a light or a dark look. */
final class DeskWindow {
  /** A window of 960 × 640 with its frame holds all. */
  private static final double LEAST_WIDE = 944;

  private static final double LEAST_HIGH = 600;

  private final Stage stage;
  private final DeskSettings settings;
  private final StackPane root = new StackPane();
  private final ScrollPane scroller = new QuietScroller();
  private final UserDataFolder places;
  private final Words ofSystem;
  private final Function<Words, SystemServices> outside;
  private final ChangeListener<Boolean> looked;
  private DeskController room;

  /**
   * A window.
   *
   * @param ofSystem the words that are spoken until the person chooses others
   * @param outside what the system gives, asking in the words given
   */
  DeskWindow(
      Stage stage, UserDataFolder places, Words ofSystem, Function<Words, SystemServices> outside) {
    this.stage = stage;
    this.places = places;
    this.ofSystem = ofSystem;
    this.outside = outside;
    this.settings = new DeskSettings(places.settings());
    for (FontFace face : FontFace.values()) {
      try (var in = face.open()) {
        Font.loadFont(in, 12);
      } catch (IOException e) {
        throw new UncheckedIOException("the bundled font cannot be read", e);
      }
    }
    looked =
        (o, was, is) -> {
          if (is) {
            room().recheckFiles();
          }
        };
    room = controller();
    root.getStyleClass().add("desk");
    root.getChildren().add(room.node());
    scroller.setFitToWidth(true);
    scroller.setFitToHeight(true);
    scroller.getStyleClass().add("small-window");
  }

  private DeskController controller() {
    DeskController made =
        new DeskController(
            settings,
            places,
            new DeskController.WindowSwitches(
                this::switchLook, this::switchRoom, this::switchLanguage),
            outside.apply(words()));
    made.node().setMinSize(LEAST_WIDE - 20, LEAST_HIGH - 20);
    return made;
  }

  private Words words() {
    return Words.ofTag(settings.language()).orElse(ofSystem);
  }

  /**
   * The next language. All that says anything is made anew; the plan, its past and what is looked
   * at stay.
   */
  private void switchLanguage() {
    settings.setLanguage(words().language().equals("es") ? "en" : "es");
    DeskController before = room;
    before.close();
    room = controller();
    room.setDark(settings.dark());
    Scene scene = stage.getScene();
    room.drops().on(scene);
    boolean small = root.getChildren().get(0) == scroller;
    scroller.setContent(small ? room.node() : null);
    root.getChildren().setAll(small ? scroller : room.node());
    room.goOn(before);
  }

  /** Leaves the keys to what lies in it. */
  private static final class QuietScroller extends ScrollPane {
    @Override
    public void requestFocus() {
      // Nothing of its own takes keys.
    }
  }

  DeskContext bench() {
    return room.bench();
  }

  DeskController room() {
    return room;
  }

  void show(List<String> plans) {
    WindowPlace place = new WindowPlace(settings);
    // Sheets before what they dress: nodes that are in a scene are matched against all rules again
    // whenever its sheets change.
    Scene scene = new Scene(new Pane(), place.width(), place.height());
    scene.getStylesheets().add(DeskWindow.class.getResource("desk.css").toExternalForm());
    scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> room.keyPressed(e));
    scene.addEventFilter(KeyEvent.KEY_TYPED, e -> room.keyTyped(e));
    room.drops().on(scene);
    dress(settings.dark());
    spread();
    scene.setRoot(root);
    stage.setScene(scene);
    stage.setMinWidth(480);
    stage.setMinHeight(360);
    place.put(stage);
    scene.widthProperty().addListener((o, was, is) -> scroll(scene));
    scene.heightProperty().addListener((o, was, is) -> scroll(scene));
    scroll(scene);
    stage.setTitle("Slabwright");
    stage.setOnCloseRequest(e -> place.keep(stage));
    stage.focusedProperty().addListener(looked);
    stage.show();
    room.begin(plans);
  }

  /** Below the least size that holds all, all is scrolled. */
  private void scroll(Scene scene) {
    boolean small = scene.getWidth() < LEAST_WIDE || scene.getHeight() < LEAST_HIGH;
    Node now = root.getChildren().get(0);
    if (small != (now == scroller)) {
      root.getChildren().clear();
      scroller.setContent(small ? room.node() : null);
      root.getChildren().add(small ? scroller : room.node());
    }
  }

  void switchLook() {
    settings.setDark(!settings.dark());
    dress(settings.dark());
  }

  /** Wider targets for thumbs and gloves, or not. */
  private void switchRoom() {
    settings.setOn("roomy", !settings.isOn("roomy"));
    spread();
  }

  private void spread() {
    root.getStyleClass().remove("roomy");
    if (settings.isOn("roomy")) {
      root.getStyleClass().add("roomy");
    }
  }

  private void dress(boolean dark) {
    String theme = dark ? "theme-dark.bss" : "theme-light.bss";
    Application.setUserAgentStylesheet(DeskWindow.class.getResource(theme).toExternalForm());
    root.getStyleClass().remove("dark");
    if (dark) {
      root.getStyleClass().add("dark");
    }
    room.setDark(dark);
  }

  /** The stage may live on: it must not hold on to what was shown in it. */
  void close() {
    stage.focusedProperty().removeListener(looked);
    stage.setOnCloseRequest(null);
    room.close();
    settings.close();
  }
}
