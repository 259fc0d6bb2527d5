package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.words.Words;

/** A desk in a window without a display, with a data folder of its own. */
final class DeskUnderTest implements AutoCloseable {
  private final DeskWindow window;
  private final Stage stage;

  private DeskUnderTest(DeskWindow window, Stage stage) {
    this.window = window;
    this.stage = stage;
  }

  static DeskUnderTest open(Path data, double wide, double high, List<String> plans)
      throws TimeoutException {
    return open(data, new FixedChooser(data), wide, high, plans);
  }

  static DeskUnderTest open(
      Path data, Chooser chooser, double wide, double high, List<String> plans)
      throws TimeoutException {
    SystemServices outside =
        new SystemServices(chooser, new NoPrinter(), f -> {}, Platform::runLater, Words.english());
    return open(data, wide, high, plans, outside);
  }

  static DeskUnderTest open(
      Path data, double wide, double high, List<String> plans, SystemServices outside)
      throws TimeoutException {
    Stage stage = FxToolkit.registerPrimaryStage();
    DeskWindow window =
        on(
            () -> {
              DeskWindow w =
                  new DeskWindow(
                      stage,
                      new UserDataFolder(data),
                      outside.words(),
                      words ->
                          new SystemServices(
                              outside.chooser(),
                              outside.printing(),
                              outside.folders(),
                              outside.home(),
                              words));
              w.room().bench().settings().setNumber("width", wide);
              w.room().bench().settings().setNumber("height", high);
              w.show(plans);
              // The stage is shared; a test before may have left it smaller.
              stage.sizeToScene();
              return w;
            });
    DeskUnderTest desk = new DeskUnderTest(window, stage);
    desk.settle();
    return desk;
  }

  static <T> T on(Callable<T> work) {
    return WaitForAsyncUtils.waitForAsyncFx(30_000, work);
  }

  DeskController room() {
    return window.room();
  }

  DeskWindow window() {
    return window;
  }

  Stage stage() {
    return stage;
  }

  Node node(String id) {
    return stage.getScene().lookup("#" + id);
  }

  /** Waits until what was asked for has been worked out and shown. */
  void settle() throws TimeoutException {
    laidOut();
    WaitForAsyncUtils.waitFor(90, TimeUnit.SECONDS, () -> on(() -> room().isUpToDate()));
    laidOut();
  }

  /** Waits until the JavaFX thread has done what it was asked for, and what that asked for. */
  static void handled() {
    on(() -> null);
    on(() -> null);
  }

  /** As {@link #handled}, and until the window has been laid out after it. */
  void laidOut() throws TimeoutException {
    handled();
    CompletableFuture<Boolean> pulse = new CompletableFuture<>();
    Scene scene = stage.getScene();
    Runnable seen = () -> pulse.complete(true);
    on(
        () -> {
          scene.addPostLayoutPulseListener(seen);
          Platform.requestNextPulse();
          return null;
        });
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, pulse);
    on(
        () -> {
          scene.removePostLayoutPulseListener(seen);
          return null;
        });
  }

  /** Waits until the whole job and its pages have been worked out too. */
  void settleAll() throws TimeoutException {
    settle();
    WaitForAsyncUtils.waitFor(120, TimeUnit.SECONDS, () -> on(() -> room().isAllWorkedOut()));
    settle();
  }

  @Override
  public void close() {
    on(
        () -> {
          window.close();
          stage.hide();
          stage.setScene(new Scene(new Pane()));
          return null;
        });
  }
}
