package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;

/** Blocks that stand on one page together, such as what is signed and its line. */
public record KeptBlock(List<Block> blocks) implements Block {
  public KeptBlock {
    blocks = List.copyOf(blocks);
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Slice> all = new ArrayList<>();
    for (Block block : blocks) {
      block.slices(type, width).forEach(s -> all.add(new Slice(s.height(), true, s.inks())));
    }
    if (!all.isEmpty()) {
      Slice last = all.remove(all.size() - 1);
      all.add(new Slice(last.height(), false, last.inks()));
    }
    return all;
  }
}
