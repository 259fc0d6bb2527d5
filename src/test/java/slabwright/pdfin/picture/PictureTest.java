package slabwright.pdfin.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.units.Result;
import slabwright.words.Words;

class PictureTest {
  private static Picture read(byte[] file) {
    return Picture.read(file).orThrow();
  }

  private static String refusal(byte[] file) {
    return Words.english().say(((Result.Refused<Picture>) Picture.read(file)).message());
  }

  private static byte[] jpeg() {
    return SamplePictures.file(SamplePictures.marked(80, 40), "jpg");
  }

  @Test
  void a_small_picture_keeps_its_pixels() {
    Picture picture = read(SamplePictures.file(SamplePictures.marked(80, 40), "png"));
    assertThat(picture.width()).isEqualTo(80);
    assertThat(picture.height()).isEqualTo(40);
    assertThat(SamplePictures.red(picture.image(), 3, 3)).isTrue();
    assertThat(SamplePictures.red(picture.image(), 70, 30)).isFalse();
  }

  @Test
  void a_huge_picture_is_made_smaller() {
    Picture picture = read(SamplePictures.file(SamplePictures.marked(9000, 300), "png"));
    assertThat(picture.width()).isEqualTo(Picture.LONGEST_SIDE);
    assertThat(picture.height()).isBetween(132, 134);
  }

  @Test
  void what_is_kept_says_nothing_of_who_took_it() {
    byte[] photo = SamplePictures.noted(jpeg(), 1, true);
    assertThat(text(photo)).contains("SPY").contains("Exif");
    assertThat(text(read(photo).png())).doesNotContain("SPY").doesNotContain("Exif");
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  /** Where the stored top-left corner comes to stand, by the meaning of the eight values. */
  @ParameterizedTest
  @CsvSource({
    "1, false, false, 80", "2, true, false, 80", "3, true, true, 80", "4, false, true, 80",
    "5, false, false, 40", "6, true, false, 40", "7, true, true, 40", "8, false, true, 40"
  })
  void a_photo_is_turned_upright(int orientation, boolean right, boolean low, int width) {
    for (boolean little : new boolean[] {true, false}) {
      BufferedImage image = read(SamplePictures.noted(jpeg(), orientation, little)).image();
      assertThat(image.getWidth()).isEqualTo(width);
      int x = right ? image.getWidth() - 4 : 3;
      int y = low ? image.getHeight() - 4 : 3;
      assertThat(SamplePictures.red(image, x, y)).isTrue();
    }
  }

  /** A header longer than usual, an XMP block under Exif's own marker, a colour profile. */
  @ParameterizedTest
  @CsvSource({
    "E0, JFIF-with-a-small-picture-of-its-own",
    "E1, http://ns.adobe.com/xap/1.0/",
    "E1, short",
    "E2, ICC_PROFILE"
  })
  void the_note_is_found_behind_another_block(String marker, String content) {
    byte[] photo = SamplePictures.noted(jpeg(), 6, true);
    byte[] block = SamplePictures.behind(photo, Integer.parseInt(marker, 16), content);
    assertThat(read(block).width()).isEqualTo(40);
  }

  @Test
  void fill_bytes_before_a_marker_are_passed_over() {
    byte[] photo = SamplePictures.noted(jpeg(), 6, true);
    byte[] filled = new byte[photo.length + 3];
    Arrays.fill(filled, (byte) 0xFF);
    System.arraycopy(photo, 0, filled, 0, 2);
    System.arraycopy(photo, 2, filled, 5, photo.length - 2);
    assertThat(ExifOrientation.of(filled)).isEqualTo(ExifOrientation.QUARTER_RIGHT);
  }

  @Test
  void a_note_cut_short_is_passed_over() {
    byte[] photo = SamplePictures.noted(jpeg(), 6, false);
    for (int cut = 0; cut < 60; cut++) {
      assertThat(ExifOrientation.of(Arrays.copyOf(photo, cut)))
          .isIn(ExifOrientation.AS_IS, ExifOrientation.QUARTER_RIGHT);
    }
  }

  @Test
  void what_is_no_picture_is_refused() {
    assertThat(refusal("heron".getBytes(StandardCharsets.US_ASCII)))
        .isEqualTo("This is not a picture: PNG, JPEG and PDF can be traced over.");
    assertThat(refusal(SamplePictures.file(SamplePictures.marked(8, 8), "gif")))
        .startsWith("A gif picture");
    byte[] png = SamplePictures.file(SamplePictures.marked(80, 40), "png");
    assertThat(refusal(Arrays.copyOf(png, 60))).startsWith("This picture cannot be read");
  }

  /** A PNG header that claims 30,000 × 30,000 pixels is refused before they are asked for. */
  @Test
  void a_picture_that_claims_to_be_enormous_is_refused() {
    byte[] png = SamplePictures.file(SamplePictures.marked(8, 8), "png");
    png[18] = 0x75;
    png[22] = 0x75;
    assertThat(refusal(png)).contains("make it smaller first");
  }
}
