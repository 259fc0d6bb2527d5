package slabwright.inlay.artwork;

/** Characters between tags. */
record SvgText(String text) implements SvgNode {}
