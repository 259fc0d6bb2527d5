package slabwright.shape;

/**
 * What lies on a border: segment {@code segment} of ring {@code ring} of the layer, counted from 0;
 * forward when it runs the border's way.
 */
public record BorderSource(int layer, int ring, int segment, boolean forward) {}
