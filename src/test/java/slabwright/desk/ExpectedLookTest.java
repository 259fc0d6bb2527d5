package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.model.Stage;
import slabwright.desk.model.input.Viewport;
import slabwright.desk.model.scene.ExpectedLook;
import slabwright.words.Words;

class ExpectedLookTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    Path plan = TestSites.withArrow(data);
    SystemServices outside =
        new SystemServices(
            new FixedChooser(data),
            new TestPrinter(),
            f -> {},
            new Brake("errand"),
            Words.english());
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()), outside);
    hands = new DeskGestures(desk);
    hands.stage(Stage.INLAY);
    desk.settleAll();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private ExpectedLook look() {
    return desk.room().parts().look();
  }

  private ExpectedLook.Painted painted() throws TimeoutException {
    desk.settleAll();
    return DeskUnderTest.on(() -> look().painted().orElseThrow());
  }

  private boolean shown(String id) {
    return DeskUnderTest.on(() -> desk.node(id).isVisible());
  }

  @Test
  void the_switch_shows_the_floor_and_says_what_the_picture_is_worth() throws TimeoutException {
    assertThat(shown("look-worth")).isFalse();
    hands.click("as-it-should-look");
    ExpectedLook.Painted p = painted();
    assertThat(p.argb()).hasSize(p.window().width() * p.window().height());
    assertThat(p.window().viewport())
        .isEqualTo(DeskUnderTest.on(() -> desk.room().slab().viewport()));
    assertThat(shown("look-worth")).isTrue();
    assertThat(DeskUnderTest.on(() -> ((Label) desk.node("look-worth")).getText()))
        .contains("sample panel decides");
    hands.click("as-it-should-look");
    assertThat(shown("look-worth")).isFalse();
    assertThat(DeskUnderTest.on(() -> look().painted())).isEmpty();
  }

  @Test
  void of_many_windows_asked_for_the_newest_is_painted() throws TimeoutException {
    hands.click("as-it-should-look");
    painted();
    Viewport last =
        DeskUnderTest.on(
            () -> {
              Viewport v = desk.room().slab().viewport();
              for (int i = 0; i < 20; i++) {
                v = v.panned(7, 3);
                look().ask(new ExpectedLook.Window(v, 900, 600, 1, "#ffffff"));
              }
              desk.room().slab().setViewport(v);
              return v;
            });
    assertThat(painted().window().viewport()).isEqualTo(last);
  }

  /** The picture of a window 300 by 200 in so many pixels to one. */
  private ExpectedLook.Painted painted(ExpectedLook own, double grain) throws TimeoutException {
    Viewport v = DeskUnderTest.on(() -> desk.room().slab().viewport());
    DeskUnderTest.on(
        () -> {
          own.ask(new ExpectedLook.Window(v, 300, 200, grain, "#ffffff"));
          return null;
        });
    WaitForAsyncUtils.waitFor(
        30,
        TimeUnit.SECONDS,
        () ->
            DeskUnderTest.on(
                () ->
                    !own.isWorking()
                        && own.painted().filter(p -> p.window().grain() == grain).isPresent()));
    return DeskUnderTest.on(() -> own.painted().orElseThrow());
  }

  @Test
  void a_screen_of_twice_the_pixels_gets_a_picture_twice_as_fine() throws TimeoutException {
    DeskModel parts = desk.room().parts();
    ExpectedLook own =
        DeskUnderTest.on(
            () ->
                new ExpectedLook(
                    parts.bench().desk(), parts.answers(), parts.book()::text, Platform::runLater));
    DeskUnderTest.on(
        () -> {
          own.set(true);
          return null;
        });
    ExpectedLook.Painted coarse = painted(own, 1);
    ExpectedLook.Painted fine = painted(own, 2);
    assertThat(fine.argb()).hasSize(600 * 400);
    double off = 0;
    for (int y = 0; y < 200; y++) {
      for (int x = 0; x < 300; x++) {
        off +=
            Math.abs((coarse.argb()[y * 300 + x] & 255) - (fine.argb()[2 * y * 600 + 2 * x] & 255));
      }
    }
    assertThat(off / (300 * 200)).as("the same place, mean difference of 255").isLessThan(6);
    DeskUnderTest.on(
        () -> {
          own.close();
          return null;
        });
  }

  @Test
  void pictures_are_saved_as_png() throws TimeoutException, IOException {
    hands.click("as-it-should-look");
    desk.settleAll();
    hands.click("save-look");
    desk.settleAll();
    try (Stream<Path> all = Files.list(data.resolve("out"))) {
      assertThat(all.map(p -> p.getFileName().toString()).sorted())
          .containsExactly("tram-shed-draft-a1-floor.png", "tram-shed-draft-a1-from-door.png");
    }
  }
}
