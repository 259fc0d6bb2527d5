package slabwright.sheets.page;

import java.util.List;

/** Free room between blocks, in mm at type size 1; swallowed at the top of a column. */
public record Gap(double height) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    return List.of(Slice.space(height * type.k()));
  }
}
