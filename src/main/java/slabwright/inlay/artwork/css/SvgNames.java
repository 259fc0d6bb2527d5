package slabwright.inlay.artwork.css;

import java.util.Set;

/** Names of elements that the SVG library can make: those of SVG 1.1. */
final class SvgNames {
  private static final Set<String> KNOWN =
      Set.of(
          "a",
          "altGlyph",
          "altGlyphDef",
          "altGlyphItem",
          "circle",
          "clipPath",
          "defs",
          "ellipse",
          "font",
          "font-face",
          "font-face-format",
          "font-face-name",
          "font-face-src",
          "font-face-uri",
          "foreignObject",
          "g",
          "glyph",
          "glyphRef",
          "hkern",
          "image",
          "line",
          "linearGradient",
          "marker",
          "mask",
          "missing-glyph",
          "path",
          "pattern",
          "polygon",
          "polyline",
          "radialGradient",
          "rect",
          "stop",
          "style",
          "svg",
          "switch",
          "symbol",
          "text",
          "textPath",
          "tref",
          "tspan",
          "use",
          "vkern");

  private SvgNames() {}

  static boolean isKnown(String name) {
    return KNOWN.contains(name);
  }

  /** Text that is broken into lines by itself. */
  static boolean isFlowedText(String name) {
    return name.startsWith("flow");
  }

  /** A paint or a surface of many colours. */
  static boolean isMesh(String name) {
    return name.startsWith("mesh") || name.startsWith("hatch");
  }

  /** Part of an effect, such as a blur. */
  static boolean isEffect(String name) {
    return name.equals("filter") || name.startsWith("fe");
  }
}
