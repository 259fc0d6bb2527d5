package slabwright.inlay.artwork.css;

/** A piece of a graphic's text: an element or characters. */
public sealed interface SvgNode permits SvgElement, SvgText {}
