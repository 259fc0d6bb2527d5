package slabwright.sheets.page;

import java.util.List;

/** A block of a packet's page in its smallest size, lines closer, so that it stands with others. */
public record DenseBlock(Block whole) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    return whole.slices(type.dense(), width);
  }

  @Override
  public List<Slice> repeatedHead(TypeSizes type, double width) {
    return whole.repeatedHead(type.dense(), width);
  }
}
