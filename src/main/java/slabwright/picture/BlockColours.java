package slabwright.picture;

import slabwright.site.MarkKind;

/**
 * Quiet colours of what stands on a floor, as of a model in card and wood: the floor is looked at.
 */
final class BlockColours {
  static final LinearColour WALL = LinearColour.ofHex("ece7dd");
  static final LinearColour CUT_WALL = LinearColour.ofHex("53575a");
  static final LinearColour SILL = LinearColour.ofHex("a89f90");
  static final LinearColour KERB = LinearColour.ofHex("9b9992");
  static final LinearColour LEAF = LinearColour.ofHex("b59c7d");
  private static final LinearColour CARD = LinearColour.ofHex("eae6dd");
  private static final LinearColour WOOD = LinearColour.ofHex("cdb592");
  private static final LinearColour PLASTER = LinearColour.ofHex("dbd6cc");
  private static final LinearColour STONE = LinearColour.ofHex("bdbbb4");

  private BlockColours() {}

  static LinearColour of(MarkKind kind) {
    return switch (kind.type()) {
      case ISLAND -> CARD;
      case BOOTH -> WOOD;
      case COLUMN -> PLASTER;
      default -> STONE;
    };
  }
}
