package slabwright.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * Splits chains at every place where two of them meet, once for all. Works in whole grid steps, so
 * that chains which share a slanted line are exactly collinear.
 *
 * <p>Crossings are rounded to the grid, which may make new ones, so chains are noded until a pass
 * finds nothing more to split. If asked, an edge is also led through each corner whose grid cell it
 * passes through, as in iterated snap rounding (D. Halperin and E. Packer, 2002), but only where it
 * does. What has come to rest so stays as it is when it is noded again.
 */
final class Noding {
  static final PrecisionModel STEPS = new PrecisionModel(1);

  /** Each pass only splits edges; drawings seldom need a fourth. */
  private static final int MOST_PASSES = 16;

  private final boolean joins;
  private final int mostPasses;
  private final BooleanSupplier cancelled;
  private NodingMethod rung = NodingMethod.PLAIN;

  private Noding(boolean joins, int mostPasses, BooleanSupplier cancelled) {
    this.joins = joins;
    this.mostPasses = mostPasses;
    this.cancelled = cancelled;
  }

  /** Corners whose grid cell an edge passes through come to lie on it. */
  static Noding joining(BooleanSupplier cancelled) {
    return joining(MOST_PASSES, cancelled);
  }

  /** The same with at most so many passes of each method. */
  static Noding joining(int mostPasses, BooleanSupplier cancelled) {
    return new Noding(true, mostPasses, cancelled);
  }

  /**
   * Corners stay beside the edges they come near to: cheaper, for curves that only need to cross.
   */
  static Noding crossing() {
    return new Noding(false, MOST_PASSES, () -> false);
  }

  NodingMethod rung() {
    return rung;
  }

  List<SegmentString> run(List<GridChain> chains) {
    List<SegmentString> strings = strings(chains);
    for (int pass = 0; pass < mostPasses; pass++) {
      SegmentSplitter splitter = split(strings, joins, pass > 0);
      if (splitter.foundNothing()) {
        return strings;
      }
      rung = pass == 0 ? NodingMethod.PLAIN : NodingMethod.PLAIN_AGAIN;
      strings = list(NodedSegmentString.getNodedSubstrings(strings));
    }
    return snapRounded(strings);
  }

  private List<SegmentString> snapRounded(List<SegmentString> unsettled) {
    List<SegmentString> strings = unsettled;
    for (int pass = 0; pass < mostPasses; pass++) {
      SnapRoundingNoder noder = new SnapRoundingNoder(STEPS);
      noder.computeNodes(strings);
      strings = list(noder.getNodedSubstrings());
      if (split(strings, joins, true).foundNothing()) {
        rung = NodingMethod.SNAP_ROUNDED;
        return strings;
      }
    }
    rung = NodingMethod.NOT_SETTLED;
    if (!split(strings, false, true).foundNothing()) {
      throw new IllegalStateException("edges still cross after snap rounding again and again");
    }
    return strings;
  }

  /** Marks on the strings where they are to be split. */
  private SegmentSplitter split(List<SegmentString> strings, boolean joins, boolean late) {
    SegmentSplitter splitter = new SegmentSplitter(joins, late, cancelled);
    new MCIndexNoder(splitter, splitter.nearness()).computeNodes(strings);
    if (cancelled.getAsBoolean()) {
      throw new CancellationException();
    }
    return splitter;
  }

  private static List<SegmentString> strings(List<GridChain> chains) {
    List<SegmentString> list = new ArrayList<>(chains.size());
    for (GridChain chain : chains) {
      chain.runs(points -> list.add(new NodedSegmentString(points, chain)));
    }
    return list;
  }

  private static List<SegmentString> list(Collection<?> strings) {
    List<SegmentString> list = new ArrayList<>(strings.size());
    for (Object s : strings) {
      list.add((SegmentString) s);
    }
    return list;
  }
}
