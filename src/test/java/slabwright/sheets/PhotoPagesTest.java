package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.drawing.EncodedPicture;
import slabwright.drawing.Ink;
import slabwright.drawing.Raster;
import slabwright.drawing.Text;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPhoto;
import slabwright.sheets.packet.office.OfficePacket;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PaperSize;
import slabwright.site.job.PinnedPhoto;
import slabwright.units.PartFaults;

class PhotoPagesTest {
  private static final String CRACK = "crack-1";

  private static PrintedPhoto photo(
      String mark, LocalDate on, PinnedPhoto.Phase phase, boolean there) {
    EncodedPicture grey =
        EncodedPicture.of(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), 0.8f);
    return new PrintedPhoto(
        new PinnedPhoto(
            mark + ".jpg",
            "reading-hall",
            new PinnedPhoto.OnMark(mark),
            Optional.of(on),
            "",
            Optional.of(phase)),
        there ? Optional.of(new PrintedPhoto.Pixels(grey, 4 / 3.0)) : Optional.empty());
  }

  private static List<Ink> page(List<PrintedPhoto> photos) {
    PacketContents job = SheetSamples.tramHall().job(PaperSize.LETTER).showing(photos);
    return OfficePacket.drafts(job, new MissingPages(new PartFaults())).stream()
        .map(FramedDraft::draft)
        .filter(d -> d.title().equals("Photos of the site"))
        .flatMap(d -> d.inks().stream())
        .toList();
  }

  private static List<String> words(List<Ink> inks) {
    return inks.stream().filter(Text.class::isInstance).map(i -> ((Text) i).words()).toList();
  }

  @Test
  void before_and_after_of_one_place_stand_beside_each_other_whatever_their_order() {
    List<Ink> inks =
        page(
            List.of(
                photo("column-1", LocalDate.of(2026, 11, 2), PinnedPhoto.Phase.BEFORE, true),
                photo(CRACK, LocalDate.of(2026, 12, 18), PinnedPhoto.Phase.AFTER, true),
                photo(CRACK, LocalDate.of(2026, 11, 3), PinnedPhoto.Phase.BEFORE, true)));
    List<Raster> rasters =
        inks.stream().filter(Raster.class::isInstance).map(i -> (Raster) i).toList();
    assertThat(rasters).hasSize(3);
    assertThat(rasters.get(0).at().minY()).isEqualTo(rasters.get(1).at().minY());
    assertThat(rasters.get(2).at().minY()).isGreaterThan(rasters.get(0).at().maxY());
    assertThat(words(inks)).anyMatch(w -> w.contains("before") && w.contains("Nov 3"));
  }

  @Test
  void a_photo_that_is_gone_is_named_instead_of_left_out() {
    List<Ink> inks =
        page(List.of(photo(CRACK, LocalDate.of(2026, 11, 3), PinnedPhoto.Phase.BEFORE, false)));
    assertThat(words(inks)).anyMatch(w -> w.contains("crack-1.jpg is not beside the plan"));
  }

  @Test
  void without_photos_there_is_no_such_page() {
    assertThat(page(List.of())).isEmpty();
  }
}
