package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.List;
import java.util.zip.Deflater;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.shape.Region;
import slabwright.words.Words;

/** Fonts that a graphic carries within itself; here the shipped bold face under another name. */
class EmbeddedFontTest {
  @Test
  void letters_are_drawn_in_the_font_that_the_graphic_carries() throws IOException {
    Artwork art = lettered("font/ttf", bold());
    assertThat(art.warnings()).isEmpty();
    assertThat(letters(art)).isEqualTo(inShippedBold());
  }

  /** Packed here by the W3C Recommendation WOFF 1.0, sections 3 to 5. */
  @Test
  void a_font_packed_as_woff_is_unpacked() throws IOException {
    Artwork art = lettered("font/woff", packed(bold()));
    assertThat(art.warnings()).isEmpty();
    assertThat(letters(art)).isEqualTo(inShippedBold());
  }

  @Test
  void an_italic_cut_is_used_for_italics_instead_of_a_sheared_one() throws IOException {
    String svg =
        face("font-style:italic", "font/ttf", bold()) + text("Tram Letters' font-style='italic");
    assertThat(letters(Svg.art(Svg.page(svg), 500))).isEqualTo(inShippedBold());
  }

  @Test
  void a_bold_that_is_made_by_thickening_is_said_and_stops_the_cut() throws IOException {
    String svg =
        face("font-weight:normal", "font/ttf", font("/fonts/DejaVuSans.ttf"))
            + text("Tram Letters' font-weight='bold");
    assertThat(Svg.art(Svg.page(svg), 500).warnings())
        .extracting(ArtworkWarning::kind)
        .containsExactly(ArtworkWarning.Kind.TEXT_SET_OTHERWISE);
  }

  @Test
  void a_font_packed_as_woff2_is_said_and_stops_the_cut() throws IOException {
    ArtworkWarning w =
        lettered("font/woff2", new byte[] {'w', 'O', 'F', '2', 0, 1}).warnings().get(0);
    assertThat(w.kind()).isEqualTo(ArtworkWarning.Kind.FONT_SUBSTITUTED);
    assertThat(Words.english().say(w.message())).contains("Tram Letters", "WOFF2");
  }

  @Test
  void damaged_fonts_are_said_and_stop_the_cut() throws IOException {
    byte[] woff = packed(bold());
    byte[] half = java.util.Arrays.copyOf(woff, woff.length / 2);
    byte[] noise = "no font at all".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
    for (byte[] bad : List.of(half, noise, new byte[0])) {
      ArtworkWarning w = lettered("font/woff", bad).warnings().get(0);
      assertThat(w.kind()).isEqualTo(ArtworkWarning.Kind.FONT_SUBSTITUTED);
      assertThat(Words.english().say(w.message())).contains("carries, but damaged");
    }
  }

  private static Region inShippedBold() {
    return letters(Svg.art(Svg.page(text("DejaVu Sans' font-weight='bold")), 500));
  }

  private static Artwork lettered(String type, byte[] font) {
    return Svg.art(Svg.page(face("", type, font) + text("Tram Letters")), 500);
  }

  private static String face(String more, String type, byte[] font) {
    return "<style>@font-face{font-family:'Tram Letters';%s;src:url(data:%s;base64,%s)}</style>"
        .formatted(more, type, Base64.getEncoder().encodeToString(font));
  }

  private static String text(String family) {
    return "<text y='50' font-size='30' font-family='" + family + "'>Hr</text>";
  }

  private static Region letters(Artwork art) {
    return art.colours().get(0).region();
  }

  private static byte[] bold() throws IOException {
    return font("/fonts/DejaVuSans-Bold.ttf");
  }

  private static byte[] font(String name) throws IOException {
    try (InputStream in = EmbeddedFontTest.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }

  private static byte[] packed(byte[] sfnt) throws IOException {
    ByteBuffer in = ByteBuffer.wrap(sfnt);
    int tables = in.getShort(4);
    ByteBuffer directory = ByteBuffer.allocate(20 * tables);
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    int start = 44 + 20 * tables;
    for (int i = 0; i < tables; i++) {
      int entry = 12 + 16 * i;
      byte[] raw = new byte[in.getInt(entry + 12)];
      in.get(in.getInt(entry + 8), raw);
      byte[] small = deflated(raw);
      byte[] kept = small.length < raw.length ? small : raw;
      directory.putInt(in.getInt(entry)).putInt(start + data.size()).putInt(kept.length);
      directory.putInt(raw.length).putInt(in.getInt(entry + 4));
      data.write(kept);
      data.write(new byte[-kept.length & 3]);
    }
    ByteBuffer head = ByteBuffer.allocate(44);
    head.putInt(0x774F4646).putInt(in.getInt(0)).putInt(start + data.size());
    head.putShort((short) tables).putShort((short) 0).putInt(sfnt.length);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(head.array());
    out.write(directory.array());
    out.write(data.toByteArray());
    return out.toByteArray();
  }

  private static byte[] deflated(byte[] raw) {
    Deflater deflater = new Deflater();
    deflater.setInput(raw);
    deflater.finish();
    byte[] buffer = new byte[raw.length + 64];
    int length = deflater.deflate(buffer);
    deflater.end();
    return java.util.Arrays.copyOf(buffer, length);
  }
}
