package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.canvas.PhotoHover;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;
import slabwright.site.Mark;
import slabwright.site.job.PinnedPhoto;

class PhotosTest extends RoomOnDesk {
  @Override
  List<Mark> marks() {
    return List.of(island("one", 3000, 2000, 1000, 1000));
  }

  /** A photo of 2400 by 1600 held a quarter turned, with its day and place noted. */
  @BeforeEach
  void photo() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(2400, 1600, BufferedImage.TYPE_INT_RGB), "jpeg", out);
    byte[] plain = out.toByteArray();
    ByteBuffer tiff = ByteBuffer.allocate(120);
    tiff.putShort((short) 0x4d4d).putShort((short) 42).putInt(8).putShort((short) 3);
    tiff.putShort((short) 0x0112)
        .putShort((short) 3)
        .putInt(1)
        .putShort((short) 6)
        .putShort((short) 0);
    tiff.putShort((short) 0x8769).putShort((short) 4).putInt(1).putInt(50);
    tiff.putShort((short) 0x8825).putShort((short) 2).putInt(8).putInt(100);
    tiff.position(50).putShort((short) 1);
    tiff.putShort((short) 0x9003).putShort((short) 2).putInt(20).putInt(70);
    tiff.position(70).put("2026:11:03 09:30:00".getBytes(StandardCharsets.US_ASCII));
    tiff.position(100).put("N52SPY".getBytes(StandardCharsets.US_ASCII));
    ByteBuffer file = ByteBuffer.allocate(plain.length + 130);
    file.put(plain, 0, 2).putShort((short) 0xFFE1).putShort((short) 128);
    file.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
    file.put(plain, 2, plain.length - 2);
    Files.write(data.resolve("photo.jpg"), file.array());
  }

  private List<PinnedPhoto> photos() {
    return hands.site().job().photos();
  }

  private void drop(Path file, PlanItem on) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().drops().open(file, Optional.of(on));
          return null;
        });
    desk.settle();
  }

  @Test
  void a_photo_dropped_on_a_mark_is_kept_small_upright_dated_and_tells_no_place()
      throws TimeoutException, IOException {
    Path folder = Files.createDirectories(data.resolve("camera"));
    Path taken = Files.copy(data.resolve("photo.jpg"), folder.resolve("IMG_7.jpg"));
    drop(taken, new PlanItem.OfMark("one"));
    assertThat(photos())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.pin()).isEqualTo(new PinnedPhoto.OnMark("one"));
              assertThat(p.on()).contains(LocalDate.of(2026, 11, 3));
            });
    Path kept = data.resolve(photos().get(0).file());
    BufferedImage image = ImageIO.read(kept.toFile());
    assertThat(image.getHeight()).isEqualTo(1600);
    assertThat(image.getWidth()).isBetween(1066, 1067);
    assertThat(Files.readString(kept, StandardCharsets.ISO_8859_1))
        .doesNotContain("SPY", "Exif", "2026:11");
    hands.hover(3000, 2000);
    assertThat(DeskUnderTest.on(() -> ((HBox) desk.node("photo-hover")).getChildren())).hasSize(1);
    hands.hover(6500, 4500);
    assertThat(DeskUnderTest.on(() -> desk.node("photo-hover").isVisible())).isFalse();
  }

  @Test
  void a_photo_of_a_corner_says_before_and_after_and_what_it_shows_and_comes_off()
      throws TimeoutException {
    hands.stage(Stage.MEASURE).clickSlab(0, 0);
    hands.click("photo-add").choose("photo-0-phase", "before the work");
    hands.fill("photo-0-note", "crack at the sill");
    assertThat(photos())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.pin()).isEqualTo(new PinnedPhoto.OnCorner(0));
              assertThat(p.phase()).contains(PinnedPhoto.Phase.BEFORE);
              assertThat(p.note()).isEqualTo("crack at the sill");
            });
    hands.click("photo-0-away");
    assertThat(photos()).isEmpty();
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(photos()).hasSize(1);
  }

  @Test
  void a_photo_is_shown_where_the_pointer_rests_on_its_mark() throws TimeoutException, IOException {
    drop(data.resolve("photo.jpg"), new PlanItem.OfMark("one"));
    Vec on = middle("one");
    hands.hover(7000, 5500);
    assertThat(DeskUnderTest.on(() -> desk.node("photo-hover").isVisible())).isFalse();
    hands.hover(on.x(), on.y());
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> DeskUnderTest.on(() -> desk.node("photo-hover").isVisible()));
    hands.hover(7000, 5500);
    assertThat(DeskUnderTest.on(() -> desk.node("photo-hover").isVisible())).isFalse();
  }

  @Test
  void a_photo_that_is_gone_takes_no_room() throws TimeoutException, IOException {
    drop(data.resolve("photo.jpg"), new PlanItem.OfMark("one"));
    Files.delete(data.resolve(photos().get(0).file()));
    PinnedPhoto gone = photos().get(0);
    ImageView view =
        DeskUnderTest.on(
            () -> PhotoHover.view(data.resolve("any.site.json"), gone, 100, 100).orElseThrow());
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> DeskUnderTest.on(() -> view.getImage().isError()));
    assertThat(DeskUnderTest.on(view::isManaged)).isFalse();
  }

  private Vec middle(String mark) {
    return mark(mark).form().region(1).bounds().middle();
  }

  @Test
  void a_photo_with_nothing_picked_asks_for_a_place_first() throws TimeoutException {
    hands.press(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.P);
    assertThat(photos()).isEmpty();
    assertThat(DeskUnderTest.on(() -> desk.room().bench().desk().refusal())).isPresent();
  }
}
