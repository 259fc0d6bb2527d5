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
    Aggregate seen = Aggregate.of(exposure);
    return switch (kind) {
      case SLAB -> exposed(SLAB, seen, 0.05f, 1, 11);
      case TRENCH_PROUD -> exposed(YOUNG, seen.deeper(), 0.03f, 0.75f, 23);
      case TRENCH_FLUSH -> exposed(YOUNG, seen, 0.03f, 1.45f, 29);
      case TRENCH_LOW -> new GroundLook(FILLER, 0, 0, 0.015f, 0.25f, 31);
      case PATCH -> new GroundLook(LEVELLED, 0, 0, 0.03f, 0.5f, 37);
      case RESIDUE -> exposed(SKIN, seen, 0.16f, 0.6f, 41);
      case FILLED -> new GroundLook(JOINT, 0, 0, 0.02f, 0.1f, 43);
      case METAL -> new GroundLook(STEEL, 0, 0, 0.02f, 0, 47);
    };
  }

  /**
   * Stones that ground shows.
   *
   * @param cell size of one stone's cell, mm
   * @param share of the cells with a stone
   */
  private record Aggregate(double cell, double share) {
    private static final Aggregate CREAM = new Aggregate(3, 0.06);
    private static final Aggregate FINE = new Aggregate(6, 0.44);
    private static final Aggregate MEDIUM = new Aggregate(14, 0.54);
    private static final Aggregate COARSE = new Aggregate(24, 0.64);
    private static final Aggregate COARSER = new Aggregate(30, 0.74);

    static Aggregate of(Exposure exposure) {
      return switch (exposure) {
        case CREAM -> CREAM;
        case FINE -> FINE;
        case MEDIUM -> MEDIUM;
        case COARSE -> COARSE;
      };
    }

    /** As ground one step deeper shows them. */
    Aggregate deeper() {
      return cell < FINE.cell
          ? FINE
          : cell < MEDIUM.cell ? MEDIUM : cell < COARSE.cell ? COARSE : COARSER;
    }
  }

  private static GroundLook exposed(
      LinearColour paste, Aggregate seen, float blotches, float uptake, int seed) {
    return new GroundLook(paste, seen.cell(), seen.share(), blotches, uptake, seed);
  }
}
