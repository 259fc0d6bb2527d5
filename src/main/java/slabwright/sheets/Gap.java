package slabwright.sheets;

import java.util.List;

/** Free room between blocks, in mm at type size 1; swallowed at the top of a column. */
record Gap(double height) implements Block {
  @Override
  public List<Slice> slices(Type type, double width) {
    return List.of(Slice.space(height * type.k()));
  }
}
