package slabwright.desk;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.transform.Transform;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;

/**
 * Takes a picture of each stage with the tram hall open. Runs only when asked: {@code
 * -Dslabwright.pictures=docs/pictures}.
 */
@EnabledIfSystemProperty(named = "slabwright.pictures", matches = ".+")
class PicturesOfTheDesk {
  @TempDir Path data;

  private final Path folder = Path.of(System.getProperty("slabwright.pictures", "target"));

  @Test
  void every_stage_is_pictured() throws TimeoutException, IOException {
    Files.createDirectories(folder);
    double scale = Double.parseDouble(System.getProperty("slabwright.pictures.scale", "1"));
    String[] size = System.getProperty("slabwright.pictures.size", "1440x900").split("x", -1);
    boolean dark = Boolean.getBoolean("slabwright.pictures.dark");
    try (DeskUnderTest desk =
        DeskUnderTest.open(
            data, Double.parseDouble(size[0]), Double.parseDouble(size[1]), List.of())) {
      if (dark) {
        DeskUnderTest.on(
            () -> {
              desk.window().switchLook();
              return null;
            });
      }
      new DeskWalk(desk, name -> picture(desk, name, scale)).all();
    }
  }

  @Test
  void what_a_graphic_asks_and_a_proof_says_is_pictured() throws TimeoutException, IOException {
    Files.createDirectories(folder);
    String[] size = System.getProperty("slabwright.pictures.size", "1440x900").split("x", -1);
    Path plan = TestSites.withArrow(data);
    Files.writeString(
        data.resolve("arrow.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 60'>"
            + "<path fill='#14505c' d='M0,0 H60 V60 H0 Z'/>"
            + "<path fill='#ffffff' d='M20,20 H40 V40 H20 Z'/>"
            + "<path fill='#15515d' d='M70,0 H100 V60 H70 Z'/></svg>");
    Files.writeString(
        data.resolve("returned.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='1300mm' height='820mm' viewBox='0 0 1300"
            + " 820'><path fill='none' stroke='#000' d='M0,0 H1300 V820 H0 Z'/><path fill='#888'"
            + " d='M50,50 H770 V770 H50 Z'/></svg>");
    try (DeskUnderTest desk =
        DeskUnderTest.open(
            data,
            Double.parseDouble(size[0]),
            Double.parseDouble(size[1]),
            List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.stage(Stage.INLAY);
      desk.settleAll();
      DeskUnderTest.on(() -> Scrolling.toSee(desk.node("fold-seams")));
      picture(desk, "questions", 1);
      hands.click("choose-proof");
      desk.settleAll();
      picture(desk, "proof", 1);
      run(desk, "keys");
      picture(desk, "keys", 1);
      hands.press(KeyCode.ESCAPE);
      run(desk, "language");
      picture(desk, "spanish", 1);
    }
  }

  private static void run(DeskUnderTest desk, String command) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().commands().run(command);
          return null;
        });
    desk.settle();
  }

  private void picture(DeskUnderTest desk, String name, double scale)
      throws IOException, TimeoutException {
    desk.settle();
    BufferedImage image =
        DeskUnderTest.on(
            () -> {
              SnapshotParameters p = new SnapshotParameters();
              p.setTransform(Transform.scale(scale, scale));
              WritableImage shot = desk.stage().getScene().getRoot().snapshot(p, null);
              return SwingFXUtils.fromFXImage(shot, null);
            });
    ImageIO.write(image, "png", folder.resolve("desk-" + name + ".png").toFile());
  }
}
