package slabwright.sheets.page;

import java.util.List;

/** Something that stands in a column and may go on in the next one between its slices. */
public interface Block {
  /** The slices from top to bottom, for a column of the width in mm. */
  List<Slice> slices(TypeSizes type, double width);

  /** What is repeated on top where the block goes on in another column; may be empty. */
  default List<Slice> repeatedHead(TypeSizes type, double width) {
    return List.of();
  }
}
