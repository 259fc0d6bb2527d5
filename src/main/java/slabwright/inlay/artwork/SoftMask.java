package slabwright.inlay.artwork;

import java.util.List;

/**
 * A mask: what it paints, in the page's pixels. It lets through where what is painted on top is at
 * least half bright (luminance times alpha), within the mask's own extent.
 */
public record SoftMask(List<PaintedShape> painted, ClipOutlines extent) {}
