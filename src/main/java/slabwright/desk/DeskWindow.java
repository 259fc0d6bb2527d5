package slabwright.desk;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.application.Application;
import javafx.beans.value.ChangeListener;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Font;
import javafx.stage.Stage;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.DeskSettings;
import slabwright.drawing.FontFace;

/** The window: the start screen or the workroom, in a light or a dark look. */
final class DeskWindow {
  private static final double WIDE = 1440;
  private static final double HIGH = 900;

  private final Stage stage;
  private final DeskSettings settings;
  private final StackPane root = new StackPane();
  private final DeskController room;
  private final ChangeListener<Boolean> looked;

  DeskWindow(Stage stage, UserDataFolder places, SystemServices outside) {
    this.stage = stage;
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
    room = new DeskController(settings, places, this::switchLook, this::switchRoom, outside);
    root.getStyleClass().add("desk");
    root.getChildren().add(room.node());
  }

  DeskContext bench() {
    return room.bench();
  }

  DeskController room() {
    return room;
  }

  void show(List<String> plans) {
    Scene scene = new Scene(root, settings.number("width", WIDE), settings.number("height", HIGH));
    scene.getStylesheets().add(DeskWindow.class.getResource("desk.css").toExternalForm());
    scene.addEventFilter(KeyEvent.KEY_PRESSED, room::keyPressed);
    scene.addEventFilter(KeyEvent.KEY_TYPED, room::keyTyped);
    room.drops().on(scene);
    dress(settings.dark());
    spread();
    stage.setScene(scene);
    stage.setMinWidth(1120);
    stage.setMinHeight(700);
    stage.setTitle("Slabwright");
    stage.setOnCloseRequest(e -> keepSize());
    stage.focusedProperty().addListener(looked);
    stage.show();
    room.begin(plans);
  }

  private void keepSize() {
    settings.setNumber("width", stage.getScene().getWidth());
    settings.setNumber("height", stage.getScene().getHeight());
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
    Application.setUserAgentStylesheet(
        dark
            ? new PrimerDark().getUserAgentStylesheet()
            : new PrimerLight().getUserAgentStylesheet());
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
  }
}
