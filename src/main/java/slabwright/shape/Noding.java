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

  /**
   * Nearer to an end of an edge than this, a late crossing is moved to it, in grid steps. Late
   * crossings are ones that rounding made: of edges that all but coincide.
   */
  private static final double AT_END = 2;

  /** From this pass on that is one step more in each. */
  private static final int SLOW = 8;

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

  List<NodedRun> run(List<GridChain> chains) {
    List<NodedRun> runs = runs(chains);
    if (mostPasses == 0) {
      return snapRounded(runs);
    }
    if (compareAll(runs, joins, 0).foundNothing()) {
      return runs;
    }
    rung = NodingMethod.PLAIN;
    runs.forEach(NodedRun::split);
    Renoding again = new Renoding(runs, drift(), cancelled);
    for (int pass = 1; pass < mostPasses; pass++) {
      SegmentSplitter splitter = new SegmentSplitter(joins, atEnd(pass), cancelled);
      again.compare(splitter);
      if (splitter.foundNothing()) {
        return again.runs();
      }
      rung = NodingMethod.PLAIN_AGAIN;
      again.split();
    }
    return snapRounded(again.runs());
  }

  /**
   * Edges that meet at a very flat angle cross anew one step beyond each crossing that was rounded,
   * like a zip. Where that goes on, the crossing is moved farther, to where they part.
   */
  private static double atEnd(int pass) {
    return AT_END + Math.max(0, pass - SLOW);
  }

  /** As far as all late passes together can move an edge, grid steps; one each is for rounding. */
  private double drift() {
    double sum = 0;
    for (int pass = 1; pass < mostPasses; pass++) {
      sum += atEnd(pass) + 1;
    }
    return sum;
  }

  private List<NodedRun> snapRounded(List<NodedRun> unsettled) {
    List<NodedRun> runs = unsettled;
    for (int pass = 0; pass < mostPasses; pass++) {
      SnapRoundingNoder noder = new SnapRoundingNoder(STEPS);
      noder.computeNodes(
          runs.stream().map(r -> new NodedSegmentString(r.getCoordinates(), r.getData())).toList());
      runs = runs(noder.getNodedSubstrings());
      if (compareAll(runs, joins, AT_END).foundNothing()) {
        rung = NodingMethod.SNAP_ROUNDED;
        return runs;
      }
    }
    rung = NodingMethod.NOT_SETTLED;
    if (!compareAll(runs, false, AT_END).foundNothing()) {
      throw new IllegalStateException("edges still cross after snap rounding again and again");
    }
    return runs;
  }

  /** Marks on the runs where they are to be split. */
  private SegmentSplitter compareAll(List<NodedRun> runs, boolean joins, double atEnd) {
    SegmentSplitter splitter = new SegmentSplitter(joins, atEnd, cancelled);
    new MCIndexNoder(splitter, splitter.nearness()).computeNodes(runs);
    if (cancelled.getAsBoolean()) {
      throw new CancellationException();
    }
    return splitter;
  }

  private static List<NodedRun> runs(List<GridChain> chains) {
    List<NodedRun> list = new ArrayList<>(chains.size());
    for (GridChain chain : chains) {
      chain.runs(points -> list.add(new NodedRun(points, chain)));
    }
    return list;
  }

  private static List<NodedRun> runs(Collection<?> strings) {
    List<NodedRun> list = new ArrayList<>(strings.size());
    for (Object s : strings) {
      SegmentString string = (SegmentString) s;
      list.add(new NodedRun(string.getCoordinates(), (GridChain) string.getData()));
    }
    return list;
  }
}
