package slabwright.inlay.artwork.css;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slabwright.inlay.artwork.Rgba;

/**
 * The colour notations of CSS Color Module Level 4 that the SVG library does not know: {@code
 * rgba()}, {@code hsl()}, {@code hwb()}, four- and eight-digit hex, {@code transparent}, with
 * commas or spaces.
 */
final class CssColourParser {
  private static final Pattern FUNCTION = Pattern.compile("(rgba?|hsla?|hwb)\\(([^()]*)\\)");
  private static final Pattern HEX = Pattern.compile("#([0-9a-f]{4}|[0-9a-f]{8})");
  private static final Pattern NUMBER =
      Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:e[+-]?\\d+)?)(%|deg|grad|rad|turn)?");

  private CssColourParser() {}

  /** The colour, or empty when the text is none of these notations. */
  static Optional<Rgba> parse(String text) {
    String s = text.trim().toLowerCase(Locale.ROOT);
    if (s.equals("transparent")) {
      return Optional.of(new Rgba(0, 0, 0, 0));
    }
    if (s.equals("rebeccapurple")) {
      return Optional.of(Rgba.ofHex("#663399"));
    }
    Matcher hex = HEX.matcher(s);
    if (hex.matches()) {
      return Optional.of(hexWithAlpha(hex.group(1)));
    }
    Matcher f = FUNCTION.matcher(s);
    return f.matches() ? function(f.group(1), f.group(2)) : Optional.empty();
  }

  private static Rgba hexWithAlpha(String digits) {
    StringBuilder eight = new StringBuilder();
    for (int i = 0; i < digits.length(); i++) {
      char c = digits.charAt(i);
      eight.append(c);
      if (digits.length() == 4) {
        eight.append(c);
      }
    }
    Rgba solid = Rgba.ofHex("#" + eight.substring(0, 6));
    double alpha = Integer.parseInt(eight.substring(6), 16) / 255.0;
    return new Rgba(solid.r(), solid.g(), solid.b(), alpha);
  }

  private static Optional<Rgba> function(String name, String inside) {
    List<String> parts = Stream.of(inside.trim().split("[\\s,/]+")).toList();
    if (parts.size() < 3 || parts.size() > 4) {
      return Optional.empty();
    }
    boolean readable = parts.stream().allMatch(p -> NUMBER.matcher(p).matches());
    if (!readable) {
      return Optional.empty();
    }
    double alpha = parts.size() == 4 ? clamp(scaled(parts.get(3), 1)) : 1;
    if (name.startsWith("rgb")) {
      return Optional.of(
          new Rgba(channel(parts.get(0)), channel(parts.get(1)), channel(parts.get(2)), alpha));
    }
    double hue = degrees(parts.get(0));
    double p = clamp(scaled(parts.get(1), 1 / 100.0));
    double q = clamp(scaled(parts.get(2), 1 / 100.0));
    return Optional.of(name.equals("hwb") ? hwb(hue, p, q, alpha) : hsl(hue, p, q, alpha));
  }

  private static int channel(String part) {
    double v = part.endsWith("%") ? scaled(part, 1) * 255 : scaled(part, 1);
    return (int) Math.round(Math.max(0, Math.min(255, v)));
  }

  /** A percentage as a fraction; a bare number times {@code bare}. */
  private static double scaled(String part, double bare) {
    Matcher m = NUMBER.matcher(part);
    if (!m.matches()) {
      throw new IllegalArgumentException(part);
    }
    double v = Double.parseDouble(m.group(1));
    return "%".equals(m.group(2)) ? v / 100 : v * bare;
  }

  private static double degrees(String part) {
    Matcher m = NUMBER.matcher(part);
    if (!m.matches()) {
      throw new IllegalArgumentException(part);
    }
    double v = Double.parseDouble(m.group(1));
    String unit = m.group(2) == null ? "deg" : m.group(2);
    return switch (unit) {
      case "grad" -> v * 0.9;
      case "rad" -> Math.toDegrees(v);
      case "turn" -> v * 360;
      default -> v;
    };
  }

  /** CSS Color 4, section "Converting HSL Colors to sRGB". */
  private static Rgba hsl(double hue, double s, double l, double alpha) {
    return new Rgba(
        byteOf(hslPart(0, hue, s, l)),
        byteOf(hslPart(8, hue, s, l)),
        byteOf(hslPart(4, hue, s, l)),
        alpha);
  }

  private static double hslPart(double n, double hue, double s, double l) {
    double k = (((n + hue / 30) % 12) + 12) % 12;
    return l - s * Math.min(l, 1 - l) * Math.max(-1, Math.min(Math.min(k - 3, 9 - k), 1));
  }

  private static Rgba hwb(double hue, double white, double black, double alpha) {
    if (white + black >= 1) {
      int grey = byteOf(white / (white + black));
      return new Rgba(grey, grey, grey, alpha);
    }
    double[] parts = new double[3];
    for (int i = 0; i < 3; i++) {
      double pure = hslPart(new double[] {0, 8, 4}[i], hue, 1, 0.5);
      parts[i] = pure * (1 - white - black) + white;
    }
    return new Rgba(byteOf(parts[0]), byteOf(parts[1]), byteOf(parts[2]), alpha);
  }

  private static int byteOf(double fraction) {
    return (int) Math.round(clamp(fraction) * 255);
  }

  private static double clamp(double v) {
    return Math.max(0, Math.min(1, v));
  }
}
