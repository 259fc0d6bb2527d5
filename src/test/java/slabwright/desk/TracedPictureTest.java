package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;
import slabwright.site.GraphicSource.Traced;
import slabwright.site.Inlay;

/** A picture as a graphic: dropped or pasted, traced, and set in words. */
class TracedPictureTest {
  @TempDir Path data;
  @TempDir Path elsewhere;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
    hands.stage(Stage.INLAY);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private Path sign() throws IOException {
    BufferedImage image = new BufferedImage(160, 80, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 160, 80);
    g.setColor(new Color(0xb02030));
    g.fill(new Ellipse2D.Double(20, 20, 40, 40));
    g.setColor(new Color(0x204090));
    g.fillRect(80, 20, 60, 40);
    g.dispose();
    Path file = elsewhere.resolve("sign.png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  private void drop(Path file) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().drops().open(file);
          return null;
        });
    desk.settle();
  }

  private List<Inlay> inlays() {
    return DeskUnderTest.on(() -> desk.room().bench().desk().site().areas().get(0).inlays());
  }

  @Test
  void a_picture_dropped_at_the_inlay_stage_is_traced_and_says_its_doubt()
      throws TimeoutException, IOException {
    drop(sign());
    assertThat(inlays()).hasSize(1);
    assertThat(inlays().get(0).graphic()).isEqualTo("sign.png");
    assertThat(data.resolve("sign.png")).exists();
    String doubt = DeskUnderTest.on(() -> ((Labeled) desk.node("trace-doubt")).getText());
    assertThat(doubt).contains("160 × 80 pixels");
    double colours = DeskUnderTest.on(() -> ((Slider) desk.node("trace-colours")).getValue());
    assertThat(colours).isEqualTo(3);
  }

  @Test
  void fewer_colours_are_one_step_that_undo_takes_back() throws TimeoutException, IOException {
    drop(sign());
    DeskUnderTest.on(
        () -> {
          Slider colours = (Slider) desk.node("trace-colours");
          colours.setValueChanging(true);
          colours.setValue(2);
          colours.setValueChanging(false);
          return null;
        });
    desk.settle();
    assertThat(inlays().get(0).source().picture().map(Traced::colours)).contains(2);
    DeskUnderTest.on(
        () -> {
          desk.room().bench().desk().undo();
          return null;
        });
    desk.settle();
    assertThat(inlays().get(0).source().picture()).isEmpty();
  }

  @Test
  void a_slanted_photo_is_squared_by_four_corners_each_clicked_twice()
      throws TimeoutException, IOException {
    drop(sign());
    hands.click("trace-square");
    // the photo of 160 × 80 is shown 300 wide; a click nearer is a sixth of it on the same place
    for (Vec at : List.of(new Vec(50, 40), new Vec(250, 40), new Vec(250, 110), new Vec(50, 110))) {
      photo(at);
      photo(new Vec(150, 75));
    }
    desk.settle();
    List<Vec> corners = inlays().get(0).source().picture().orElseThrow().square();
    assertThat(corners).hasSize(4);
    double k = 160.0 / 300;
    assertThat(corners.get(0).distanceTo(new Vec(50 * k, 40 * k))).isLessThan(0.5);
    assertThat(corners.get(2).distanceTo(new Vec(250 * k, 110 * k))).isLessThan(0.5);
    hands.click("trace-flat");
    assertThat(inlays().get(0).source().picture().orElseThrow().square()).isEmpty();
  }

  private void photo(Vec at) {
    DeskUnderTest.on(
        () -> {
          Node view = ((Pane) desk.node("sign-photo")).getChildren().get(0);
          Point2D on = view.localToScene(at.x(), at.y());
          view.fireEvent(
              new MouseEvent(
                  MouseEvent.MOUSE_CLICKED,
                  on.getX(),
                  on.getY(),
                  0,
                  0,
                  MouseButton.PRIMARY,
                  1,
                  false,
                  false,
                  false,
                  false,
                  true,
                  false,
                  false,
                  true,
                  false,
                  true,
                  null));
          return null;
        });
  }

  @Test
  void a_picture_copied_elsewhere_is_pasted_as_a_graphic() throws TimeoutException, IOException {
    Path file = sign();
    DeskUnderTest.on(
        () -> {
          ClipboardContent content = new ClipboardContent();
          content.putImage(new javafx.scene.image.Image(file.toUri().toString()));
          Clipboard.getSystemClipboard().setContent(content);
          desk.room().commands().run("paste");
          return null;
        });
    desk.settle();
    assertThat(inlays()).hasSize(1);
    assertThat(Files.exists(data.resolve(inlays().get(0).graphic()))).isTrue();
  }
}
