package slabwright.desk;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Bounds;
import javafx.scene.Parent;
import javafx.scene.SnapshotParameters;
import javafx.scene.robot.Robot;
import javafx.scene.transform.Transform;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.drawing.EncodedPicture;

/**
 * Every stage at the three sizes of window, at one and two pixels to each of the window's, light or
 * dark: a contact sheet for each look and scale, a size to a row. Runs only when asked: {@code
 * -Dslabwright.pictures=docs/pictures}. With {@code -Dslabwright.pictures.each=FOLDER} each picture
 * is kept by itself too, to be looked at large.
 *
 * <p>Two pixels: on a screen that has them ({@code -Dglass.gtk.uiScale=2}) what the screen shows;
 * without one the window drawn twice as large, where the slab's own picture is no finer than
 * before.
 */
@EnabledIfSystemProperty(named = "slabwright.pictures", matches = ".+")
class PicturesAtAllSizes {
  private static final int[][] SIZES = {{960, 640}, {1280, 800}, {1440, 900}};
  private static final List<String> ON_SHEET =
      List.of("start", "tape", "measure", "mark", "prep", "inlay", "expected", "finish", "sheets");
  private static final int THUMB = 300;
  private static final int GAP = 6;
  private static final float QUALITY = 0.72f;

  @TempDir Path data;

  private final Path folder = Path.of(System.getProperty("slabwright.pictures", "target"));
  private final Optional<Path> each =
      Optional.ofNullable(System.getProperty("slabwright.pictures.each")).map(Path::of);

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark"})
  void every_stage_is_on_the_contact_sheets(String look) throws IOException, TimeoutException {
    Files.createDirectories(folder);
    Map<Integer, List<List<BufferedImage>>> sheets = new LinkedHashMap<>();
    for (int[] size : SIZES) {
      Map<Integer, List<BufferedImage>> rows = row(look, size[0], size[1]);
      rows.forEach((scale, row) -> sheets.computeIfAbsent(scale, s -> new ArrayList<>()).add(row));
    }
    for (Map.Entry<Integer, List<List<BufferedImage>>> s : sheets.entrySet()) {
      Path file = folder.resolve("desk-sizes-" + look + "-" + s.getKey() + "x.jpg");
      Files.write(file, EncodedPicture.of(sheet(s.getValue()), QUALITY).jpeg());
    }
  }

  private Map<Integer, List<BufferedImage>> row(String look, int wide, int high)
      throws IOException, TimeoutException {
    Map<Integer, List<BufferedImage>> rows = new LinkedHashMap<>();
    Path own = Files.createDirectories(data.resolve(look + wide));
    try (DeskUnderTest desk = DeskUnderTest.open(own, wide, high, List.of())) {
      if (look.equals("dark")) {
        DeskUnderTest.on(
            () -> {
              desk.window().switchLook();
              return null;
            });
      }
      DeskWalk.Camera camera =
          name -> {
            desk.settle();
            for (int scale = 1; scale <= 2; scale++) {
              BufferedImage image = picture(desk, scale);
              if (ON_SHEET.contains(name)) {
                rows.computeIfAbsent(scale, s -> new ArrayList<>()).add(thumb(image));
              }
              keep(image, look + "-" + wide + "x" + high + "-" + scale + "x-" + name + ".png");
            }
          };
      new DeskWalk(desk, camera).all();
    }
    return rows;
  }

  private void keep(BufferedImage image, String name) throws IOException {
    if (each.isPresent()) {
      Files.createDirectories(each.get());
      ImageIO.write(image, "png", each.get().resolve(name).toFile());
    }
  }

  private static BufferedImage picture(DeskUnderTest desk, int scale) {
    return DeskUnderTest.on(
        () -> {
          Parent root = desk.stage().getScene().getRoot();
          if (scale > 1 && desk.stage().getOutputScaleX() == scale) {
            Bounds b = root.localToScreen(root.getBoundsInLocal());
            return SwingFXUtils.fromFXImage(
                new Robot()
                    .getScreenCapture(
                        null, b.getMinX(), b.getMinY(), b.getWidth(), b.getHeight(), false),
                null);
          }
          SnapshotParameters p = new SnapshotParameters();
          p.setTransform(Transform.scale(scale, scale));
          return SwingFXUtils.fromFXImage(root.snapshot(p, null), null);
        });
  }

  private static BufferedImage thumb(BufferedImage image) {
    int high = THUMB * image.getHeight() / image.getWidth();
    BufferedImage small = new BufferedImage(THUMB, high, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = small.createGraphics();
    g.drawImage(image.getScaledInstance(THUMB, high, Image.SCALE_AREA_AVERAGING), 0, 0, null);
    g.dispose();
    return small;
  }

  private static BufferedImage sheet(List<List<BufferedImage>> rows) {
    int wide = rows.stream().mapToInt(r -> r.size() * (THUMB + GAP)).max().orElse(1);
    int high = rows.stream().mapToInt(r -> r.get(0).getHeight() + GAP).sum();
    BufferedImage sheet = new BufferedImage(wide + GAP, high + GAP, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = sheet.createGraphics();
    g.setColor(new Color(0x77, 0x77, 0x77));
    g.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
    int y = GAP;
    for (List<BufferedImage> row : rows) {
      int x = GAP;
      for (BufferedImage p : row) {
        g.drawImage(p, x, y, null);
        x += THUMB + GAP;
      }
      y += row.get(0).getHeight() + GAP;
    }
    g.dispose();
    return sheet;
  }
}
