package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;

/**
 * Blocks beside blocks; never cut.
 *
 * @param share of the width that the left ones get
 */
public record PairBlock(double share, List<Block> left, List<Block> right) implements Block {
  private static final double GAP = 6;

  public PairBlock {
    left = List.copyOf(left);
    right = List.copyOf(right);
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double first = (width - GAP) * share;
    List<Ink> inks = new ArrayList<>();
    double high = set(inks, left, type, 0, first);
    high = Math.max(high, set(inks, right, type, first + GAP, width - GAP - first));
    return List.of(new Slice(high, false, inks));
  }

  private static double set(
      List<Ink> inks, List<Block> blocks, TypeSizes type, double x, double width) {
    double y = 0;
    for (Block block : blocks) {
      for (Slice slice : block.slices(type, width)) {
        inks.addAll(slice.at(x, y));
        y += slice.height();
      }
    }
    return y;
  }
}
