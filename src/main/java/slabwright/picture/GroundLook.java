package slabwright.picture;

import slabwright.site.Exposure;

/**
 * What a kind of ground looks like before dye. The colours are nominal, chosen by eye for ground
 * concrete; how the kinds differ follows the notes on exposure: a proud trench is ground deeper and
 * shows more stone, a low one shows its filler, a levelled spot is a tight cream, the skin under
 * old adhesive is blotchy and keeps dye out.
 *
 * @param paste colour of the paste between stones
 * @param stone size of one stone's cell, mm; 0 shows none
 * @param stones share of the cells with a stone, 0 to 1
 * @param blotches how strongly it varies over a hand's breadth, as a share of its lightness
 * @param uptake how much dye it takes, 1 for the old slab
 * @param seed sets its chance apart from that of other grounds
 */
record GroundLook(
    LinearColour paste, double stone, double stones, float blotches, float uptake, int seed) {
  /** How the parts of a floor are told apart. */
  enum Kind {
    SLAB,
    TRENCH_PROUD,
    TRENCH_LOW,
    TRENCH_FLUSH,
    PATCH,
    RESIDUE,
    FILLED,
    METAL
  }

  /** The old slab, which all colours refer to. */
  static final LinearColour SLAB = LinearColour.ofHex("c7c3ba");

  private static final LinearColour YOUNG = LinearColour.ofHex("b9b8b4");
  private static final LinearColour FILLER = LinearColour.ofHex("d2d0c9");
  private static final LinearColour LEVELLED = LinearColour.ofHex("d6d0c1");
  private static final LinearColour SKIN = LinearColour.ofHex("bbb097");
  private static final LinearColour JOINT = LinearColour.ofHex("57585a");
  private static final LinearColour STEEL = LinearColour.ofHex("6f7477");

  static GroundLook of(Kind kind, Exposure exposure) {
    return switch (kind) {
      case SLAB -> exposed(SLAB, depth(exposure), 0.05f, 1, 11);
      case TRENCH_PROUD -> exposed(YOUNG, depth(exposure) + 1, 0.03f, 0.75f, 23);
      case TRENCH_FLUSH -> exposed(YOUNG, depth(exposure), 0.03f, 1.45f, 29);
      case TRENCH_LOW -> new GroundLook(FILLER, 0, 0, 0.015f, 0.25f, 31);
      case PATCH -> new GroundLook(LEVELLED, 0, 0, 0.03f, 0.5f, 37);
      case RESIDUE -> exposed(SKIN, depth(exposure), 0.16f, 0.6f, 41);
      case FILLED -> new GroundLook(JOINT, 0, 0, 0.02f, 0.1f, 43);
      case METAL -> new GroundLook(STEEL, 0, 0, 0.02f, 0, 47);
    };
  }

  private static int depth(Exposure exposure) {
    return switch (exposure) {
      case CREAM -> 0;
      case FINE -> 1;
      case MEDIUM -> 2;
      case COARSE -> 3;
    };
  }

  /**
   * Ground that shows aggregate.
   *
   * @param depth 0 cream, 1 salt and pepper, 2 medium, 3 large, 4 larger still
   */
  private static GroundLook exposed(
      LinearColour paste, int depth, float blotches, float uptake, int seed) {
    double stone =
        switch (depth) {
          case 0 -> 3;
          case 1 -> 6;
          case 2 -> 14;
          case 3 -> 24;
          default -> 30;
        };
    double share = depth == 0 ? 0.06 : 0.34 + 0.1 * depth;
    return new GroundLook(paste, stone, share, blotches, uptake, seed);
  }
}
