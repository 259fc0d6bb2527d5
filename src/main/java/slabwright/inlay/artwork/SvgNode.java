package slabwright.inlay.artwork;

/** A piece of a graphic's text: an element or characters. */
sealed interface SvgNode permits SvgElement, SvgText {}
