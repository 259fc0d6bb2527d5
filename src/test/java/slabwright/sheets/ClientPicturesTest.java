package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.Raster;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.PaperSize;

/** The floors' pictures on the client's first page. */
class ClientPicturesTest {
  @ParameterizedTest
  @EnumSource(names = {"LETTER", "A4"})
  void each_picture_has_two_hundred_pixels_to_the_inch_of_paper(PaperSize paper)
      throws IOException {
    List<Raster> pictures =
        SheetSamples.tramHall()
            .packet(Packet.CLIENT, paper)
            .pages()
            .get(0)
            .drawing()
            .plain()
            .stream()
            .filter(Raster.class::isInstance)
            .map(Raster.class::cast)
            .toList();
    assertThat(pictures).hasSize(3);
    for (Raster r : pictures) {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(r.picture().jpeg()));
      assertThat((double) image.getWidth()).isCloseTo(r.at().width() / 25.4 * 200, within(1.0));
      assertThat((double) image.getHeight()).isCloseTo(r.at().height() / 25.4 * 200, within(1.0));
    }
  }
}
