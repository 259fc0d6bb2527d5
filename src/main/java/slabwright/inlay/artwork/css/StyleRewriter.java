package slabwright.inlay.artwork.css;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.Rgba;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/** Turns declarations of today's CSS into ones the SVG library understands. */
final class StyleRewriter {
  private static final Map<String, String> OPACITY_OF =
      Map.of(
          "fill", "fill-opacity",
          "stroke", "stroke-opacity",
          "stop-color", "stop-opacity",
          "flood-color", "flood-opacity",
          "color", "",
          "lighting-color", "",
          "solid-color", "solid-opacity");
  private static final Pattern URL = Pattern.compile("url\\(\\s*(['\"]?)(.*?)\\1\\s*\\)");
  private static final Pattern PERCENT = Pattern.compile("([\\d.]+)%");
  private static final Pattern LENGTH = Pattern.compile("([+-]?[\\d.]+)(rem|Q|q)\\b");
  private static final Pattern NEGATIVE = Pattern.compile("(^|[\\s,])-\\s*[\\d.]*[1-9]");
  private static final Set<String> LETTERS_OR_URL =
      Set.of("font-family", "font", "src", "content", "d", "class", "id");

  /** Said or done for each text by itself; the library would stumble over their values. */
  private static final Set<String> OF_TEXT =
      Set.of("inline-size", "shape-inside", "shape-subtract", "text-transform", "white-space");

  /** As browsers take them, in px. The SVG library has a scale of its own. */
  private static final Map<String, String> FONT_SIZES =
      Map.of(
          "xx-small", "9px",
          "x-small", "10px",
          "small", "13px",
          "medium", "16px",
          "large", "18px",
          "x-large", "24px",
          "xx-large", "32px",
          "xxx-large", "48px");

  private final Set<String> ids;
  private final PercentageBase viewport;
  private final WarningCollector notes;

  StyleRewriter(Set<String> ids, PercentageBase viewport, WarningCollector notes) {
    this.ids = ids;
    this.viewport = viewport;
    this.notes = notes;
  }

  static boolean handles(String property) {
    return OPACITY_OF.containsKey(property)
        || property.endsWith("opacity")
        || property.startsWith("marker")
        || Set.of(
                "mask",
                "clip-path",
                "filter",
                "stroke-width",
                "font-size",
                "stroke-dasharray",
                "vector-effect",
                "font-kerning",
                "inline-size",
                "shape-inside",
                "shape-subtract",
                "text-transform",
                "white-space",
                "mix-blend-mode")
            .contains(property);
  }

  Map<String, String> rewrite(Map<String, String> declarations, CssVariables variables) {
    Map<String, String> out = new LinkedHashMap<>();
    declarations.forEach(
        (property, value) -> {
          if (!property.startsWith("--")) {
            rewrite(property, value, variables, out);
          }
        });
    return out;
  }

  private void rewrite(String property, String raw, CssVariables vars, Map<String, String> out) {
    Optional<String> known = vars.expand(raw);
    if (known.isEmpty()) {
      notes.add(
          Kind.STYLE_LEFT_OUT,
          Message.of("inlay.style-rewriter.variable-set-nowhere", property, raw));
      return;
    }
    String important = known.get().contains("!") ? " !important" : "";
    String value = known.get().replaceFirst("\\s*!\\s*important\\s*$", "").trim();
    if (property.equals("filter")) {
      effect(value);
    }
    if (property.equals("filter") || OF_TEXT.contains(property)) {
      return;
    }
    if (!LETTERS_OR_URL.contains(property)) {
      value = plainLength(property, linked(property, value));
    }
    if (value.isEmpty() || isImpossible(property, value)) {
      return;
    }
    if (property.equals("clip-path") && value.matches("[a-z-]+\\(.*") && !value.startsWith("url")) {
      notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.style-rewriter.clip-left-out", value));
      return;
    }
    if (property.equals("font-kerning")) {
      // the property of SVG 1.1: a distance of one's own in place of the font's
      out.put("kerning", (value.equals("none") ? "0" : "auto") + important);
      return;
    }
    unsupported(property, value);
    if (property.equals("font-size")) {
      value = FONT_SIZES.getOrDefault(value.toLowerCase(Locale.ROOT), value);
    }
    if (property.endsWith("opacity")) {
      value = fraction(value);
    }
    if (OPACITY_OF.containsKey(property)) {
      colour(property, value, important, out);
    } else {
      out.put(property, value + important);
    }
  }

  private void effect(String value) {
    if (!value.equals("none")) {
      notes.add(Kind.EFFECT_LEFT_OUT, Message.of("inlay.scene-visitor.effect-left-out"));
    }
  }

  private void unsupported(String property, String value) {
    if (property.equals("vector-effect") && value.equals("non-scaling-stroke")) {
      notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.style-rewriter.line-keeps-its-width"));
    } else if (property.equals("mix-blend-mode") && !value.equals("normal")) {
      notes.add(Kind.EFFECT_LEFT_OUT, Message.of("inlay.style-rewriter.blending-left-out"));
    }
  }

  /** Lengths in units the library knows; "" for a sum that can't be worked out. */
  String plainLength(String property, String value) {
    Optional<String> plain = CssCalc.plain(modernUnits(value), viewport.whole(property));
    if (plain.isEmpty()) {
      notes.add(
          Kind.STYLE_LEFT_OUT, Message.of("inlay.style-rewriter.calc-left-out", property, value));
    }
    return plain.orElse("");
  }

  /** CSS drops such a value; the library would stop at it. */
  private boolean isImpossible(String property, String value) {
    boolean size =
        property.equals("stroke-width")
            || property.equals("stroke-dasharray")
            || property.equals("font-size");
    boolean less = size && NEGATIVE.matcher(value).find();
    if (less) {
      notes.add(
          Kind.STYLE_LEFT_OUT,
          Message.of("inlay.style-rewriter.less-than-nothing", property, value));
    }
    return less;
  }

  private void colour(String property, String raw, String important, Map<String, String> out) {
    String value = CssPaint.plain(property, raw);
    Optional<Rgba> parsed = CssColourParser.parse(value);
    if (parsed.isEmpty()) {
      paint(property, value, important, out);
      return;
    }
    Rgba c = parsed.get();
    boolean paint = property.equals("fill") || property.equals("stroke");
    out.put(property, (c.alpha() == 0 && paint ? "none" : c.hex()) + important);
    String opacity = OPACITY_OF.getOrDefault(property, "");
    if (c.alpha() < 1 && !opacity.isEmpty()) {
      out.putIfAbsent(opacity, c.alpha() + important);
    }
  }

  /** A paint that isn't understood paints nothing: black would be a colour nobody chose. */
  private void paint(String property, String value, String important, Map<String, String> out) {
    if (CssPaint.isUnderstood(value)) {
      out.put(property, value + important);
      return;
    }
    notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.style-rewriter.paint-not-understood", value));
    if (property.equals("fill") || property.equals("stroke")) {
      out.put(property, "none" + important);
    } else if (!OPACITY_OF.getOrDefault(property, "").isEmpty()) {
      out.put(OPACITY_OF.get(property), "0" + important);
    }
  }

  /** Keeps links inside the file, mends links to nothing, refuses links that lead out of it. */
  private String linked(String property, String value) {
    Matcher m = URL.matcher(value);
    if (!m.find()) {
      return value;
    }
    String target = m.group(2);
    if (!target.startsWith("#")) {
      throw external(target);
    }
    if (ids.contains(target.substring(1))) {
      return value;
    }
    notes.add(
        Kind.STYLE_LEFT_OUT,
        Message.of("inlay.style-rewriter.refers-to-nothing", property, target));
    String rest = value.substring(m.end()).trim();
    return rest.isEmpty() ? "none" : rest;
  }

  static RefusedArtworkException external(String target) {
    String shown = target.length() > 60 ? target.substring(0, 60) + "…" : target;
    return new RefusedArtworkException(
        Reason.EXTERNAL_RESOURCE, Message.of("inlay.style-rewriter.outside-the-file", shown));
  }

  private static String fraction(String value) {
    Matcher m = PERCENT.matcher(value);
    return m.matches() ? String.valueOf(Double.parseDouble(m.group(1)) / 100) : value;
  }

  /** {@code rem} at 16 px and {@code Q} at 1/40 cm (CSS Values 3). */
  static String modernUnits(String value) {
    return LENGTH
        .matcher(value)
        .replaceAll(
            m -> {
              double px = m.group(2).equals("rem") ? 16 : 96 / 2.54 / 40;
              return Double.parseDouble(m.group(1)) * px + "px";
            });
  }
}
