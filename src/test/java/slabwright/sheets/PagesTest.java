package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.EncodedPicture;
import slabwright.drawing.Ink;
import slabwright.drawing.Raster;
import slabwright.drawing.TextBox;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.sheets.page.SheetOptions;
import slabwright.site.Site;
import slabwright.site.job.FirmMark;
import slabwright.site.job.Party;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** What must hold of every page, tried on the sample site. */
class PagesTest {
  /** A gray picture of 20 by 10 pixels. */
  private static final Optional<FirmMark> MARK =
      FirmMark.of(
          Base64.getEncoder()
              .encodeToString(
                  EncodedPicture.of(new BufferedImage(20, 10, BufferedImage.TYPE_INT_RGB), 0.9f)
                      .jpeg()),
          20,
          10);

  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static byte[] pdf(List<PrintedPage> pages) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SheetFiles.pdf(pages, "Sheets", SheetSamples.DAY, out);
    return out.toByteArray();
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A4"})
  void no_two_labels_lie_on_each_other_and_none_is_cut_short(PaperSize paper) {
    for (PrintedPage page : HALL.on(paper)) {
      List<TextBox> boxes = TextBox.of(page.drawing());
      List<String> clashes = new ArrayList<>();
      for (int i = 0; i < boxes.size(); i++) {
        for (int j = i + 1; j < boxes.size(); j++) {
          if (boxes.get(i).overlaps(boxes.get(j))) {
            clashes.add(boxes.get(i).words() + " / " + boxes.get(j).words());
          }
        }
      }
      assertThat(clashes).as("%s on %s", page.name(), paper).isEmpty();
      assertThat(new PageRules(page).wordsCutShort()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A4"})
  void a_doorways_name_on_the_site_layout_lies_on_nothing_that_is_marked(PaperSize paper) {
    PrintedPage layout = HALL.on(paper).get(0);
    Set<String> doors =
        TextBox.of(layout.drawing()).stream()
            .map(TextBox::words)
            .filter(w -> w.matches("yard door .*[0-9].*"))
            .collect(Collectors.toSet());
    assertThat(doors).isNotEmpty();
    assertThat(new PageRules(layout).wordsOnFields(doors)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A4"})
  void nothing_lies_outside_the_frame(PaperSize paper) {
    Bounds frame = PageFrame.of(paper).frame().grown(0.01);
    for (PrintedPage page : HALL.on(paper)) {
      for (TextBox box : TextBox.of(page.drawing())) {
        Bounds b = box.bounds();
        assertThat(
                frame.contains(new Vec(b.minX(), b.minY()))
                    && frame.contains(new Vec(b.maxX(), b.maxY())))
            .as("%s on %s: %s", page.name(), paper, box.words())
            .isTrue();
      }
      page.drawing()
          .plain()
          .forEach(
              ink ->
                  assertThat(frame.including(ink.reach()))
                      .as("%s on %s", page.name(), paper)
                      .isEqualTo(frame));
    }
  }

  @Test
  void every_page_has_its_paper_size_and_real_words_in_embedded_fonts() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(HALL.on(PaperSize.TABLOID)))) {
      String words = new PDFTextStripper().getText(document);
      assertThat(words)
          .contains(
              "Tram Hall Library",
              "invented",
              "By hand, to tick off",
              "Screening estimates for planning",
              "Rolling order");
      for (PDPage page : document.getPages()) {
        assertThat(page.getMediaBox().getWidth()).isEqualTo(17 * 72f);
        assertThat(page.getMediaBox().getHeight()).isEqualTo(11 * 72f);
        for (var name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
    }
  }

  @Test
  void the_same_site_and_day_give_the_same_bytes() throws IOException {
    List<PrintedPage> again = HALL.make(HALL.site().withUnits(UnitSystem.METRIC), PaperSize.A4);
    assertThat(pdf(HALL.on(PaperSize.A4))).isEqualTo(pdf(again));
  }

  @Test
  void every_page_says_where_it_belongs() {
    List<PrintedPage> pages = HALL.on(PaperSize.A4);
    for (int i = 0; i < pages.size(); i++) {
      List<String> words = TextBox.of(pages.get(i).drawing()).stream().map(TextBox::words).toList();
      assertThat(words)
          .contains(
              "Tram Hall Library",
              "Sheets, page " + (i + 1) + " of " + pages.size(),
              "draft, 25\u00a0Nov\u00a02026 · A4");
    }
  }

  @Test
  void a_mark_whose_pixels_cannot_be_read_is_left_out() {
    Party contractor =
        new Party("Lime Street Floors", "", "", "", "").withMark(FirmMark.of("/9j/2Q==", 9, 9));
    Site site = HALL.site().withJob(HALL.site().job().withContractor(contractor));
    assertThat(PacketContents.issue(site, SheetSamples.DAY).mark()).isEmpty();
  }

  @Test
  void the_title_strip_is_twelve_millimetres_and_names_contractor_phone_and_client() {
    Party contractor =
        new Party("Lime Street Floors (invented)", "", "555 0100", "", "").withMark(MARK);
    Party client = new Party("Tram Hall trust (invented)", "", "", "", "");
    Site site =
        HALL.site().withJob(HALL.site().job().withContractor(contractor).withClient(client));
    PrintedPage page =
        SheetSet.of(
                site,
                HALL.results(),
                new SheetOptions(PaperSize.TABLOID, SheetSamples.DAY, Words.english()))
            .get(0);
    Bounds strip = PageFrame.of(PaperSize.TABLOID).titleStrip();
    assertThat(strip.height()).isLessThanOrEqualTo(12);
    List<String> in =
        TextBox.of(page.drawing()).stream()
            .filter(t -> t.bounds().minY() >= strip.minY())
            .map(TextBox::words)
            .toList();
    List<Bounds> pictures =
        page.drawing().plain().stream()
            .filter(Raster.class::isInstance)
            .map(Ink::reach)
            .filter(b -> strip.including(b).equals(strip))
            .toList();
    assertThat(pictures).hasSize(1);
    assertThat(pictures.get(0).width()).isCloseTo(2 * pictures.get(0).height(), within(1e-9));
    assertThat(TextBox.of(page.drawing()).stream().map(TextBox::bounds))
        .noneMatch(b -> b.meets(pictures.get(0)));
    assertThat(in)
        .contains(
            "Lime Street Floors (invented)",
            "555 0100",
            "for Tram Hall trust (invented)",
            "invented");
  }

  @Test
  void file_names_are_plain_and_different() {
    List<String> names = HALL.on(PaperSize.TABLOID).stream().map(PrintedPage::name).toList();
    assertThat(names).doesNotHaveDuplicates().allMatch(n -> n.matches("page-\\d\\d-[a-z0-9-]+"));
  }
}
