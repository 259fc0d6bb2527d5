package slabwright.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.IntersectionAdder;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * Splits chains at every place where two of them meet, once for all. Works in whole grid steps, so
 * that chains which share a slanted line are exactly collinear.
 *
 * <p>The ladder: plain noding, good when afterwards no edge has a crossing or, if asked, a foreign
 * corner within half a grid step; plain noding of its result, when only crossings matter; else snap
 * rounding; else snap rounding of its result.
 */
final class Noding {
  private static final PrecisionModel STEPS = new PrecisionModel(1);

  private final double nearness;
  private final BooleanSupplier cancelled;
  private Rung rung = Rung.PLAIN;

  private Noding(double nearness, BooleanSupplier cancelled) {
    this.nearness = nearness;
    this.cancelled = cancelled;
  }

  /** Corners that touch an edge within half a grid step come to lie on it. */
  static Noding joining(BooleanSupplier cancelled) {
    return new Noding(NodingCheck.HALF_STEP, cancelled);
  }

  /**
   * Corners stay beside the edges they come near to: cheaper, for curves that only need to cross.
   */
  static Noding crossing() {
    return new Noding(0, () -> false);
  }

  Rung rung() {
    return rung;
  }

  List<SegmentString> run(List<Chain> chains) {
    List<SegmentString> result = plain(strings(chains));
    if (NodingCheck.holds(result, nearness)) {
      return result;
    }
    if (nearness == 0) {
      rung = Rung.PLAIN_TWICE;
      result = plain(result);
      if (NodingCheck.holds(result, 0)) {
        return result;
      }
    }
    stopIfCancelled();
    rung = Rung.SNAP_ROUNDED;
    result = snapRounded(strings(chains));
    if (NodingCheck.holds(result, 0)) {
      return result;
    }
    stopIfCancelled();
    rung = Rung.SNAP_ROUNDED_TWICE;
    result = snapRounded(result);
    if (!NodingCheck.holds(result, 0)) {
      throw new IllegalStateException("edges still cross after snap rounding twice");
    }
    return result;
  }

  private List<SegmentString> plain(List<SegmentString> strings) {
    LineIntersector intersector = new RobustLineIntersector();
    intersector.setPrecisionModel(STEPS);
    MCIndexNoder noder =
        new MCIndexNoder(
            new IntersectionAdder(intersector) {
              @Override
              public boolean isDone() {
                return cancelled.getAsBoolean();
              }
            });
    noder.computeNodes(strings);
    stopIfCancelled();
    return list(noder.getNodedSubstrings());
  }

  private static List<SegmentString> snapRounded(List<SegmentString> strings) {
    SnapRoundingNoder noder = new SnapRoundingNoder(STEPS);
    noder.computeNodes(strings);
    return list(noder.getNodedSubstrings());
  }

  private static List<SegmentString> strings(List<Chain> chains) {
    List<SegmentString> list = new ArrayList<>(chains.size());
    for (Chain chain : chains) {
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

  private void stopIfCancelled() {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException();
    }
  }
}
