package slabwright.sheets.page;

import slabwright.drawing.FillStyle;

/** What stands in one field of a table. */
public sealed interface TableCell {
  /** Words, wrapped where the column is narrow. */
  record Words(String words, boolean bold) implements TableCell {}

  /** A box to tick. */
  record Tick() implements TableCell {}

  /** A number in a ring, as beside the same thing on the plan. */
  record Ringed(String words) implements TableCell {}

  /** A swatch of a look, for a key. */
  record Swatch(FillStyle look) implements TableCell {}

  static TableCell of(String words) {
    return new Words(words, false);
  }

  static TableCell bold(String words) {
    return new Words(words, true);
  }
}
