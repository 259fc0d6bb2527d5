package slabwright.bare;

import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/** A window of JavaFX with the whole theme and three controls: what the desk's start is held to. */
public final class BareWindow extends Application {
  /** Runs it. */
  public static final class Start {
    private Start() {}

    /** Opens the window. */
    public static void main(String[] args) {
      launch(BareWindow.class, args);
    }
  }

  @Override
  public void start(Stage stage) {
    setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
    VBox box = new VBox(12, new Label("Bare"), new TextField("text"), new Button("Close"));
    stage.setScene(new Scene(box, 1280, 800));
    stage.setTitle("Bare");
    stage.show();
  }
}
