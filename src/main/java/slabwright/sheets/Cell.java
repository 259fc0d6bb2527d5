package slabwright.sheets;

import slabwright.drawing.Look;

/** What stands in one field of a table. */
sealed interface Cell {
  /** Words, wrapped where the column is narrow. */
  record Words(String words, boolean bold) implements Cell {}

  /** A box to tick. */
  record Tick() implements Cell {}

  /** A number in a ring, as beside the same thing on the plan. */
  record Ringed(String words) implements Cell {}

  /** A swatch of a look, for a key. */
  record Swatch(Look look) implements Cell {}

  static Cell of(String words) {
    return new Words(words, false);
  }

  static Cell bold(String words) {
    return new Words(words, true);
  }
}
