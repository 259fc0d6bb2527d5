package slabwright.desk;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeoutException;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;

/** Leads a desk past all that is pictured: first screen, tape, each stage of the tram hall. */
final class DeskWalk {
  /** Takes a picture of what the desk shows now. */
  interface Camera {
    void take(String name) throws IOException, TimeoutException;
  }

  private final DeskUnderTest desk;
  private final Camera camera;

  DeskWalk(DeskUnderTest desk, Camera camera) {
    this.desk = desk;
    this.camera = camera;
  }

  void all() throws IOException, TimeoutException {
    camera.take("start");
    tape();
    camera.take("tape");
    DeskUnderTest.on(
        () -> {
          desk.room().plans().openSample();
          return null;
        });
    desk.settle();
    for (Stage stage : Stage.values()) {
      DeskUnderTest.on(
          () -> {
            desk.room().bench().focus().goTo(stage);
            return null;
          });
      desk.settleAll();
      pickOne(stage);
      camera.take(stage.name().toLowerCase(Locale.ROOT));
      if (stage == Stage.INLAY) {
        expected();
      }
      if (stage == Stage.FINISH) {
        steps();
      }
      if (stage == Stage.MARK) {
        overlays();
      }
    }
  }

  /** What is still missing, and the number pad with room for thumbs. */
  private void overlays() throws TimeoutException, IOException {
    DeskGestures hands = new DeskGestures(desk);
    hands.click("tally-still-open");
    camera.take("missing");
    hands.click("tally-still-open");
    for (int i = 0; i < 2; i++) {
      run("number-pad");
      run("roomy");
      if (i == 0) {
        camera.take("thumbs");
      }
    }
  }

  /** Some of the steps of Finish, opened one after the other. */
  private void steps() throws TimeoutException, IOException {
    DeskGestures hands = new DeskGestures(desk);
    for (String step : List.of("slab-and-air-as-measured", "coats", "stops", "cautions")) {
      hands.click("fold-" + step);
      camera.take("finish-" + step);
    }
    hands.click("fold-finish-system");
  }

  /** The floor as it should look. */
  private void expected() throws TimeoutException, IOException {
    look(true);
    desk.settleAll();
    camera.take("expected");
    look(false);
  }

  private void look(boolean on) {
    DeskUnderTest.on(
        () -> {
          desk.room().parts().look().set(on);
          return null;
        });
  }

  /** A room half typed. */
  private void tape() throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().plans().startByTape();
          return null;
        });
    desk.settle();
    DeskUnderTest.on(
        () -> {
          for (String wall : List.of("24' 6\"", "r 12'", "r 8' 2\"", "l 5'")) {
            desk.room().tools().tool().type(wall);
          }
          desk.room().workroom().acted();
          return null;
        });
    desk.settle();
  }

  /** Something picked, so that its card and handles are seen. */
  private void pickOne(Stage stage) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          if (stage == Stage.MEASURE) {
            desk.room().bench().focus().select(new PlanItem.OfWall(4));
          } else if (stage == Stage.MARK) {
            desk.room()
                .bench()
                .focus()
                .area()
                .ifPresent(
                    a ->
                        desk.room()
                            .bench()
                            .focus()
                            .select(new PlanItem.OfMark(a.marks().get(0).id())));
          } else {
            desk.room().bench().focus().select();
          }
          return null;
        });
    desk.settle();
  }

  private void run(String command) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().commands().run(command);
          return null;
        });
    desk.settle();
  }
}
