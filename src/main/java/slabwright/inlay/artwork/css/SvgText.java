package slabwright.inlay.artwork.css;

/** Characters between tags. */
public record SvgText(String text) implements SvgNode {}
