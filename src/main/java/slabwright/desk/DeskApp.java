package slabwright.desk;

import java.nio.file.Path;
import javafx.application.Application;
import javafx.stage.Stage;
import slabwright.words.Words;

/** The desk: one window with one site open at a time. */
public final class DeskApp extends Application {
  private DeskWindow window;

  @Override
  public void start(Stage stage) {
    window =
        new DeskWindow(
            stage,
            UserDataFolder.ofUser(),
            Words.ofSystem(),
            words -> SystemServices.of(stage, this::show, words));
    window.show(getParameters().getUnnamed());
  }

  private void show(Path folder) {
    getHostServices().showDocument(folder.toUri().toString());
  }

  @Override
  public void stop() {
    window.close();
  }
}
