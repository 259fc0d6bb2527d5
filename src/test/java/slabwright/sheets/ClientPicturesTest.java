package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.drawing.Raster;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.words.Words;

/** The floors' pictures on the client's first page. */
class ClientPicturesTest {
  private static List<Raster> pictures(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Raster.class::isInstance)
        .map(Raster.class::cast)
        .toList();
  }

  private static String words(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words().replace('\u00a0', ' '))
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @EnumSource(names = {"LETTER", "A4"})
  void each_picture_has_two_hundred_pixels_to_the_inch_of_paper(PaperSize paper)
      throws IOException {
    List<Raster> pictures =
        pictures(SheetSamples.tramHall().packet(Packet.CLIENT, paper).pages().get(0));
    assertThat(pictures).hasSize(3);
    for (Raster r : pictures) {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(r.picture().jpeg()));
      assertThat((double) image.getWidth()).isCloseTo(r.at().width() / 25.4 * 200, within(1.0));
      assertThat((double) image.getHeight()).isCloseTo(r.at().height() / 25.4 * 200, within(1.0));
    }
  }

  /** No frame stands empty: the words stand where the view would, a plan in lines above. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void without_pictures_the_page_says_so_and_how_they_are_got(String language) {
    Words said = Words.ofTag(language).orElseThrow();
    String none = said.say("sheets.client-packet.no-picture");
    String run = said.say("sheets.client-packet.no-picture-run");
    PacketContents job = SheetSamples.tramHall().job(PaperSize.LETTER, said);
    PrintedPage painted = PacketSet.of(Packet.CLIENT, job).pages().get(0);
    List<PrintedPage> pages = PacketSet.of(Packet.CLIENT, job.withoutPictures()).pages();
    PrintedPage bare = pages.get(0);
    assertThat(run).contains("slabwright job").contains("--no-pictures");
    assertThat(words(bare)).contains(none, run);
    assertThat(words(painted)).doesNotContain(none).doesNotContain(run);
    assertThat(pictures(bare)).isEmpty();
    assertThat(bare.drawing().plain().stream().filter(i -> !(i instanceof Text)).count())
        .isGreaterThan(50);
    assertThat(words(bare)).contains(job.areas().get(0).inlays().get(0).inlay().name());
    assertThat(new PageRules(bare).wordsOnWords()).isEmpty();
    assertThat(new PageRules(bare).inkOutside()).isEmpty();
    assertThat(pages).hasSize(PacketSet.of(Packet.CLIENT, job).pages().size());
  }
}
