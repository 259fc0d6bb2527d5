package slabwright.inlay.artwork.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * The ten pictures whose edges come back farthest off, as a sheet to look at: the picture, the
 * traced outlines filled, and the true outline in blue under the traced one in red. {@code mvn -q
 * test -Dtest=PicturesOfTheWorstTraces -Dslabwright.pictures=FOLDER}
 */
@EnabledIfSystemProperty(named = "slabwright.pictures", matches = ".+")
class PicturesOfTheWorstTraces {
  private static final int WORST = 10;
  private static final int SIDE = 360;
  private static final int HEAD = 22;

  @Test
  void are_drawn() throws IOException {
    List<TracedIcon> worst =
        TracedIconsTableTest.all().stream()
            .sorted(Comparator.comparingDouble(TracedIcon::p95Mm).reversed())
            .limit(WORST)
            .toList();
    BufferedImage sheet =
        new BufferedImage(6 * SIDE, 5 * (SIDE + HEAD), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = sheet.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
    for (int i = 0; i < worst.size(); i++) {
      Graphics2D at =
          (Graphics2D) g.create(i % 2 * 3 * SIDE, i / 2 * (SIDE + HEAD), 3 * SIDE, SIDE + HEAD);
      draw(at, worst.get(i));
      at.dispose();
    }
    g.dispose();
    Path folder = Path.of(System.getProperty("slabwright.pictures"));
    Files.createDirectories(folder);
    assertThat(ImageIO.write(sheet, "png", folder.resolve("traces-worst.png").toFile())).isTrue();
  }

  private static void draw(Graphics2D g, TracedIcon t) throws IOException {
    DrawnIcon icon = DrawnIcon.named(t.icon());
    TracedIcon.Outlines traced = TracedIcon.Outlines.of(icon.drawn(t.side()), t.kind());
    g.setColor(Color.BLACK);
    g.drawString(
        "%s, %d px, %s: 95 %% of edges within %.2f mm at 1.8 m"
            .formatted(t.icon(), t.side(), t.kind(), t.p95Mm()),
        6,
        15);
    g.translate(0, HEAD);
    g.drawImage(icon.drawn(t.side()), 0, 0, SIDE, SIDE, null);
    double k = (double) SIDE / t.side();
    g.translate(SIDE, 0);
    for (int i = 0; i < traced.outlines().size(); i++) {
      g.setColor(new Color(traced.palette().get(i)));
      g.fill(scaled(traced.outlines().get(i), k));
    }
    g.translate(SIDE, 0);
    g.setStroke(new BasicStroke(1.6f));
    g.setColor(new Color(0x3070ff));
    icon.parts().forEach(p -> g.draw(scaled(p.shape(), SIDE)));
    g.setStroke(new BasicStroke(0.6f));
    g.setColor(new Color(0xd02020));
    traced.outlines().forEach(o -> g.draw(scaled(o, k)));
  }

  private static Shape scaled(Shape shape, double k) {
    return AffineTransform.getScaleInstance(k, k).createTransformedShape(shape);
  }
}
