package slabwright.sheets;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.drawing.EncodedPicture;
import slabwright.drawing.paint.PngFile;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/**
 * Sets all packets of a sample on one contact sheet, a packet to a row, in colour and in grey. Runs
 * only when asked: {@code -Dslabwright.pictures=docs/pictures}.
 */
@EnabledIfSystemProperty(named = "slabwright.pictures", matches = ".+")
class PicturesOfThePackets {
  private static final double DPI = 34;
  private static final int GAP = 8;
  private static final int MOST_ACROSS = 11;
  private static final float QUALITY = 0.8f;

  private final Path folder = Path.of(System.getProperty("slabwright.pictures", "target"));

  @ParameterizedTest
  @ValueSource(strings = {"tram-hall", "bike-workshop", "depot-floor"})
  void every_packet_is_on_the_contact_sheet(String sample) throws IOException {
    Files.createDirectories(folder);
    SheetSamples s = SheetSamples.sample(sample);
    PaperSize paper = s.site().units() == UnitSystem.METRIC ? PaperSize.A4 : PaperSize.LETTER;
    PacketContents job =
        new PacketContents(
            s.site(), s.results(), s.work(s.site()), paper, SheetSamples.DAY, Words.english());
    List<List<BufferedImage>> rows = new ArrayList<>();
    for (PrintedPacket packet : PacketSet.of(job)) {
      List<BufferedImage> pages = new ArrayList<>();
      for (PrintedPage page : packet.pages()) {
        pages.add(ImageIO.read(new ByteArrayInputStream(PngFile.write(page.drawing(), DPI))));
      }
      for (int i = 0; i < pages.size(); i += MOST_ACROSS) {
        rows.add(pages.subList(i, Math.min(i + MOST_ACROSS, pages.size())));
      }
    }
    BufferedImage sheet = sheet(rows, BufferedImage.TYPE_INT_RGB);
    write(sheet, "packets-" + sample + ".jpg");
    write(sheet(rows, BufferedImage.TYPE_BYTE_GRAY), "packets-" + sample + "-grey.jpg");
  }

  private void write(BufferedImage sheet, String name) throws IOException {
    Files.write(folder.resolve(name), EncodedPicture.of(sheet, QUALITY).jpeg());
  }

  private static BufferedImage sheet(List<List<BufferedImage>> rows, int type) {
    int wide =
        rows.stream()
            .mapToInt(r -> r.stream().mapToInt(p -> p.getWidth() + GAP).sum())
            .max()
            .orElse(1);
    int high = rows.stream().mapToInt(r -> height(r) + GAP).sum();
    BufferedImage sheet = new BufferedImage(wide + GAP, high + GAP, type);
    Graphics2D g = sheet.createGraphics();
    g.setColor(new Color(0x77, 0x77, 0x77));
    g.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
    int y = GAP;
    for (List<BufferedImage> row : rows) {
      int x = GAP;
      for (BufferedImage page : row) {
        g.drawImage(page, x, y, null);
        x += page.getWidth() + GAP;
      }
      y += height(row) + GAP;
    }
    g.dispose();
    return sheet;
  }

  private static int height(List<BufferedImage> row) {
    return row.stream().mapToInt(BufferedImage::getHeight).max().orElse(0);
  }
}
