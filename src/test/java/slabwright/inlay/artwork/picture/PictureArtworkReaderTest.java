package slabwright.inlay.artwork.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.artwork.GraphicFormat;
import slabwright.shape.Vec;

class PictureArtworkReaderTest {
  private static final Color RED = new Color(0xb0, 0x20, 0x30);
  private static final Color BLUE = new Color(0x20, 0x40, 0x90);

  private static ArtworkResult read(byte[] file, TraceSettings settings) throws IOException {
    return PictureArtworkReader.read(
        new ByteArrayInputStream(file), "sign", ArtworkOptions.ofWidth(1000), settings);
  }

  private static Artwork traced(BufferedImage image, TraceSettings settings) throws IOException {
    return (Artwork) read(DrawnIcon.png(image), settings);
  }

  private static Artwork traced(BufferedImage image) throws IOException {
    return traced(image, TraceSettings.TOLD);
  }

  private static BufferedImage paper(int w, int h, int type, Color paper) {
    BufferedImage image = new BufferedImage(w, h, type);
    Graphics2D g = image.createGraphics();
    g.setColor(paper);
    g.fillRect(0, 0, w, h);
    g.dispose();
    return image;
  }

  private static Graphics2D pen(BufferedImage image) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    return g;
  }

  /** A red disc and, right of it, a blue bar: 120 × 40 painted. */
  private static BufferedImage sign(int type) {
    BufferedImage image = paper(160, 80, type, Color.WHITE);
    Graphics2D g = pen(image);
    g.setColor(RED);
    g.fill(new Ellipse2D.Double(20, 20, 40, 40));
    g.setColor(BLUE);
    g.fillRect(80, 20, 60, 40);
    g.dispose();
    return image;
  }

  private static byte[] written(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, format, out)).isTrue();
    return out.toByteArray();
  }

  private static double area(Artwork art, Color colour) {
    int rgb = colour.getRGB() & 0xffffff;
    return art.colours().stream()
        .filter(c -> PixelColour.distance(PixelColour.packed(c.hex()), rgb) < 400)
        .mapToDouble(c -> c.region().area())
        .sum();
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg", "gif", "bmp", "tiff"})
  void the_same_sign_comes_out_of_every_format(String format) throws IOException {
    byte[] file = written(sign(BufferedImage.TYPE_INT_RGB), format);
    assertThat(GraphicFormat.of(file)).isEqualTo(GraphicFormat.PICTURE);
    Artwork art = (Artwork) read(file, TraceSettings.TOLD);
    double k = 1000.0 / 120;
    assertThat(art.mmPerPx()).isCloseTo(k, within(0.02));
    assertThat(area(art, BLUE)).isCloseTo(60 * 40 * k * k, within(60 * 40 * k * k * 0.005));
    assertThat(area(art, RED)).isCloseTo(Math.PI * 400 * k * k, within(400 * Math.PI * k * k / 50));
    assertThat(art.background().map(ColourRegion::hex)).isPresent();
    assertThat(art.doubtMm().orElseThrow()).isBetween(0.1, 10.0);
    assertThat(art.warnings())
        .extracting(ArtworkWarning::kind)
        .contains(ArtworkWarning.Kind.TRACED);
    assertThat(art.questions()).isEmpty();
  }

  /** Ink as a printer's file keeps it: no marker, 255 is full ink. */
  @Test
  void a_jpeg_in_printing_inks_is_read() throws IOException {
    Artwork art = (Artwork) read(inks(false), TraceSettings.TOLD);
    assertThat(art.colours()).hasSize(1);
    assertThat(area(art, new Color(255, 0, 0))).isPositive();
  }

  @Test
  void a_jpeg_in_inverted_printing_inks_is_read() throws IOException {
    byte[] plain = inks(true);
    byte[] marker = {
      (byte) 0xff, (byte) 0xee, 0, 14, 'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, 0
    };
    Artwork art = (Artwork) read(inserted(plain, marker), TraceSettings.TOLD);
    assertThat(area(art, new Color(255, 0, 0))).isPositive();
  }

  /** As drawing programs and converters write them: white paper used to come out black. */
  @Test
  void a_jpeg_in_inks_kept_as_brightness_and_difference_is_read() throws IOException {
    byte[] marker = {
      (byte) 0xff, (byte) 0xee, 0, 14, 'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, 2
    };
    // of what 255 less the inverted inks is: nothing on paper, 0 255 255 in the square
    int[] paper = {0, 128, 128, 255};
    int[] square = {179, 171, 0, 255};
    Artwork art = (Artwork) read(inserted(inks(paper, square), marker), TraceSettings.TOLD);
    assertThat(art.background().map(ColourRegion::hex)).contains("#ffffff");
    assertThat(area(art, new Color(255, 0, 0))).isPositive();
  }

  /** Magenta and yellow on white. */
  private static byte[] inks(boolean inverted) throws IOException {
    int[] ink = {0, 255, 255, 0};
    return inverted
        ? inks(new int[] {255, 255, 255, 255}, Arrays.stream(ink).map(i -> 255 - i).toArray())
        : inks(new int[4], ink);
  }

  private static byte[] inks(int[] paper, int[] square) throws IOException {
    WritableRaster inks = Raster.createInterleavedRaster(0, 96, 96, 4, null);
    for (int y = 0; y < 96; y++) {
      for (int x = 0; x < 96; x++) {
        boolean in = x >= 24 && x < 72 && y >= 24 && y < 72;
        inks.setPixel(x, y, in ? square : paper);
      }
    }
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (var stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(inks, null, null), null);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  /** Puts a segment right behind the start of a JPEG. */
  private static byte[] inserted(byte[] jpeg, byte[] segment) {
    byte[] out = new byte[jpeg.length + segment.length];
    System.arraycopy(jpeg, 0, out, 0, 2);
    System.arraycopy(segment, 0, out, 2, segment.length);
    System.arraycopy(jpeg, 2, out, 2 + segment.length, jpeg.length - 2);
    return out;
  }

  @Test
  void a_photo_taken_with_the_camera_on_its_side_stands_upright() throws IOException {
    byte[] turnRight = {
      (byte) 0xff,
      (byte) 0xe1,
      0,
      34,
      'E',
      'x',
      'i',
      'f',
      0,
      0,
      'M',
      'M',
      0,
      42,
      0,
      0,
      0,
      8,
      0,
      1,
      1,
      0x12,
      0,
      3,
      0,
      0,
      0,
      1,
      0,
      6,
      0,
      0,
      0,
      0,
      0,
      0
    };
    byte[] jpeg = inserted(written(sign(BufferedImage.TYPE_INT_RGB), "jpg"), turnRight);
    Artwork art = (Artwork) read(jpeg, TraceSettings.TOLD);
    assertThat(art.painted().height() / art.painted().width()).isCloseTo(3, within(0.05));
  }

  @Test
  void a_see_through_background_needs_no_question_and_white_on_it_is_a_colour() throws IOException {
    BufferedImage image = new BufferedImage(120, 120, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = pen(image);
    g.setColor(Color.WHITE);
    g.fill(new Ellipse2D.Double(20, 20, 80, 80));
    g.setColor(Color.BLACK);
    g.fill(new Ellipse2D.Double(50, 50, 20, 20));
    g.dispose();
    Artwork art = traced(image);
    assertThat(art.colours()).extracting(ColourRegion::hex).contains("#ffffff", "#000000");
    assertThat(area(art, Color.WHITE) / area(art, Color.BLACK)).isCloseTo(15, within(0.3));
    assertThat(art.questions())
        .extracting(ArtworkQuestion::kind)
        .doesNotContain(ArtworkQuestion.Kind.PAPER);
  }

  @Test
  void paper_that_cannot_be_told_is_asked_about_and_told_when_answered() throws IOException {
    BufferedImage image = paper(120, 120, BufferedImage.TYPE_INT_RGB, RED);
    Graphics2D g = image.createGraphics();
    g.setColor(BLUE);
    g.fillRect(0, 0, 60, 120);
    g.dispose();
    Artwork asked = traced(image);
    assertThat(asked.questions())
        .extracting(ArtworkQuestion::kind)
        .contains(ArtworkQuestion.Kind.PAPER);
    TraceSettings answer =
        new TraceSettings(
            OptionalInt.empty(),
            OptionalDouble.empty(),
            0,
            Optional.of("#%06x".formatted(RED.getRGB() & 0xffffff)),
            List.of());
    Artwork told = traced(image, answer);
    assertThat(told.questions()).isEmpty();
    assertThat(told.colours()).hasSize(1);
    assertThat(area(told, BLUE)).isPositive();
  }

  @Test
  void spots_narrower_than_stated_are_left_out() throws IOException {
    BufferedImage image = sign(BufferedImage.TYPE_INT_RGB);
    Graphics2D g = pen(image);
    g.setColor(BLUE);
    g.fill(new Ellipse2D.Double(66, 36, 8, 8));
    g.dispose();
    assertThat(rings(traced(image))).isEqualTo(3);
    TraceSettings coarse =
        new TraceSettings(
            OptionalInt.empty(), OptionalDouble.of(100), 0, Optional.empty(), List.of());
    assertThat(rings(traced(image, coarse))).isEqualTo(2);
  }

  private static int rings(Artwork art) {
    return art.colours().stream().mapToInt(c -> c.region().rings().size()).sum();
  }

  @Test
  void colours_are_brought_down_to_as_many_as_wished() throws IOException {
    TraceSettings two =
        new TraceSettings(
            OptionalInt.of(2), OptionalDouble.empty(), 0, Optional.empty(), List.of());
    assertThat(traced(sign(BufferedImage.TYPE_INT_RGB), two).colours()).hasSize(1);
  }

  @Test
  void corners_are_rounded_when_wished() throws IOException {
    TraceSettings round =
        new TraceSettings(
            OptionalInt.empty(), OptionalDouble.empty(), 1, Optional.empty(), List.of());
    BufferedImage image = sign(BufferedImage.TYPE_INT_RGB);
    assertThat(area(traced(image, round), BLUE)).isLessThan(area(traced(image), BLUE) * 0.9995);
  }

  @Test
  void a_shadow_over_the_paper_is_no_colour() throws IOException {
    BufferedImage image = paper(300, 200, BufferedImage.TYPE_INT_RGB, Color.WHITE);
    Graphics2D g = pen(image);
    g.setColor(BLUE);
    g.fillRect(100, 60, 100, 80);
    g.dispose();
    Random random = new Random(7);
    for (int y = 0; y < 200; y++) {
      for (int x = 0; x < 300; x++) {
        double light = 1 - 0.35 * x / 300 + 0.01 * random.nextGaussian();
        int c = image.getRGB(x, y);
        image.setRGB(
            x,
            y,
            PixelColour.packed(
                PixelColour.red(c) * light,
                PixelColour.green(c) * light,
                PixelColour.blue(c) * light));
      }
    }
    Artwork art = (Artwork) read(DrawnIcon.jpeg(image, 0.8), TraceSettings.TOLD);
    assertThat(art.colours().size()).as("colours besides the paper").isEqualTo(1);
    assertThat(rings(art)).isEqualTo(1);
    double k = art.mmPerPx();
    assertThat(area(art, BLUE) + art.colours().get(0).region().area()).isPositive();
    assertThat(art.colours().get(0).region().area() / (k * k)).isCloseTo(8000, within(80.0));
  }

  /** The line's softened edge pixels look like the sign, and both of its sides are paper. */
  @Test
  void a_thin_line_round_a_sign_is_no_shade_of_its_paper() throws IOException {
    BufferedImage image = paper(900, 700, BufferedImage.TYPE_INT_RGB, Color.WHITE);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(new Color(0x5a6a75));
    g.fillRect(300, 250, 200, 150);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(2));
    g.draw(new Rectangle2D.Double(60.3, 60.3, 780, 580));
    g.dispose();
    assertThat(traced(image).colours())
        .extracting(ColourRegion::hex)
        .containsExactlyInAnyOrder("#5a6a75", "#000000");
  }

  @Test
  void a_slanted_photo_is_squared_by_four_corners() throws IOException {
    BufferedImage flat = sign(BufferedImage.TYPE_INT_RGB);
    BufferedImage photo = paper(300, 200, BufferedImage.TYPE_INT_RGB, Color.GRAY);
    Graphics2D g = photo.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    AffineTransform at = AffineTransform.getTranslateInstance(60, 20);
    at.shear(0.2, 0.1);
    g.drawImage(flat, at, null);
    g.dispose();
    List<Vec> corners = List.of(v(at, 0, 0), v(at, 160, 0), v(at, 160, 80), v(at, 0, 80));
    TraceSettings squared =
        new TraceSettings(
            OptionalInt.empty(), OptionalDouble.empty(), 0, Optional.empty(), corners);
    Artwork art = traced(photo, squared);
    assertThat(art.colours()).hasSize(2);
    assertThat(art.painted().width() / art.painted().height()).isCloseTo(3, within(0.1));
  }

  private static Vec v(AffineTransform at, double x, double y) {
    double[] p = {x, y};
    at.transform(p, 0, p, 0, 1);
    return new Vec(p[0], p[1]);
  }

  @Test
  void a_damaged_picture_is_refused_without_its_parsers_words() throws IOException {
    byte[] whole = written(sign(BufferedImage.TYPE_INT_RGB), "png");
    ArtworkResult cut = read(Arrays.copyOf(whole, 60), TraceSettings.TOLD);
    assertThat(((ArtworkRefusal) cut).reason()).isEqualTo(ArtworkRefusal.Reason.NOT_UNDERSTOOD);
  }

  /** A PNG of a few bytes that claims 100,000 × 100,000 pixels. */
  @Test
  void a_picture_that_claims_too_many_pixels_is_refused_before_any_are_read() throws IOException {
    byte[] file = written(new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB), "png");
    for (int at : new int[] {16, 20}) {
      file[at + 1] = 1;
      file[at + 2] = (byte) 0x86;
      file[at + 3] = (byte) 0xa0;
    }
    assertThat(((ArtworkRefusal) read(file, TraceSettings.TOLD)).reason())
        .isEqualTo(ArtworkRefusal.Reason.TOO_LARGE);
  }

  @Test
  void one_colour_all_over_is_refused() throws IOException {
    byte[] file = written(paper(50, 50, BufferedImage.TYPE_INT_RGB, RED), "png");
    assertThat(((ArtworkRefusal) read(file, TraceSettings.TOLD)).reason())
        .isEqualTo(ArtworkRefusal.Reason.NOTHING_PAINTED);
  }
}
