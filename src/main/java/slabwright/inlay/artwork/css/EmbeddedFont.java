package slabwright.inlay.artwork.css;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.Message;

/**
 * One cut of a font that a graphic carries within itself, by an {@code @font-face} rule whose
 * source is in the file.
 *
 * @param font at one unit; empty when it can't be read
 * @param trouble why not, after "carries it, but "; empty when it can
 */
public record EmbeddedFont(
    String family, boolean bold, boolean slanted, Optional<Font> font, Optional<Message> trouble) {
  private static final Pattern SOURCE =
      Pattern.compile("url\\(\\s*['\"]?data:([^,'\")]*),([^'\")]*)['\"]?\\s*\\)");
  private static final int WOFF2 = 0x774F4632;
  private static final int LEAST_BOLD = 600;

  /** The cut of a rule; empty when it names no family or keeps its source outside the file. */
  static Optional<EmbeddedFont> of(Map<String, String> rule) {
    String family = rule.getOrDefault("font-family", "").replaceAll("['\"]", "").trim();
    Matcher source = SOURCE.matcher(rule.getOrDefault("src", ""));
    if (family.isEmpty() || !source.find()) {
      return Optional.empty();
    }
    boolean bold = isBold(rule.getOrDefault("font-weight", "").trim().toLowerCase(Locale.ROOT));
    boolean slanted = List.of("italic", "oblique").contains(rule.getOrDefault("font-style", ""));
    boolean base64 = source.group(1).toLowerCase(Locale.ROOT).contains(";base64");
    return Optional.of(read(family, bold, slanted, base64 ? source.group(2) : ""));
  }

  private static boolean isBold(String weight) {
    return weight.equals("bold")
        || (weight.matches("\\d{1,4}") && Integer.parseInt(weight) >= LEAST_BOLD);
  }

  private static EmbeddedFont read(String family, boolean bold, boolean slanted, String data) {
    try {
      byte[] bytes = Base64.getMimeDecoder().decode(data.replace("%2B", "+").replace("%2F", "/"));
      int mark = bytes.length < 4 ? 0 : ByteBuffer.wrap(bytes).getInt();
      if (mark == WOFF2) {
        return lost(family, bold, slanted, Message.of("inlay.embedded-font.woff2"));
      }
      Optional<byte[]> plain =
          mark == WoffReader.SIGNATURE ? WoffReader.unpack(bytes) : Optional.of(bytes);
      if (plain.isEmpty()) {
        return lost(family, bold, slanted, Message.of("inlay.embedded-font.damaged"));
      }
      Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(plain.get()));
      return new EmbeddedFont(family, bold, slanted, Optional.of(font), Optional.empty());
    } catch (FontFormatException | IOException | IllegalArgumentException e) {
      return lost(family, bold, slanted, Message.of("inlay.embedded-font.damaged"));
    }
  }

  private static EmbeddedFont lost(String family, boolean bold, boolean slanted, Message why) {
    return new EmbeddedFont(family, bold, slanted, Optional.empty(), Optional.of(why));
  }
}
