package slabwright.picture;

import java.util.List;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.PlacedInlay;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.work.book.ShopBook;

/**
 * A floor area as it should look when finished: where which ground lies, the dye over it, what
 * stands on it and around it. A value, a pure function of what goes in; frame: the site's, mm.
 *
 * <p>A picture, not a promise: colours of ground are nominal, and the sample panel decides.
 */
public final class FloorScene {
  /**
   * A part of the floor with a look of its own.
   *
   * @param rings where, site frame
   */
  record GroundPatch(List<Ring> rings, GroundLook look) {
    GroundPatch {
      rings = List.copyOf(rings);
    }
  }

  /**
   * What the sealer does.
   *
   * @param gloss how much of a mirror it is, 0 dull to 1
   * @param deepening share of the light that it leaves, as a wet stone is darker than a dry one
   */
  record Sheen(double gloss, double deepening) {}

  private final Region gross;
  private final List<Ring> floor;
  private final GroundLook slab;
  private final List<GroundPatch> patches;
  private final List<DyeFilm> films;
  private final Sheen sheen;
  private final List<StandingBlock> blocks;
  private final List<WallPiece> walls;
  private final boolean indoors;
  private final List<String> uncoloured;

  FloorScene(FloorSceneBuilder b) {
    gross = b.gross();
    floor = b.floor();
    slab = b.slab();
    patches = List.copyOf(b.patches());
    films = List.copyOf(b.films());
    sheen = b.sheen();
    blocks = List.copyOf(b.blocks());
    walls = List.copyOf(b.walls());
    indoors = b.isIndoors();
    uncoloured = List.copyOf(b.uncoloured());
  }

  /**
   * The scene of a floor area.
   *
   * @param inlays that lie on it, worked out
   * @param book says what colour a base dye has, and of what kind each product of the finish is
   */
  public static FloorScene of(FloorTakeoff takeoff, List<PlacedInlay> inlays, ShopBook book) {
    return new FloorScene(new FloorSceneBuilder(takeoff, inlays, book));
  }

  /** Bounds of the outline, site mm. */
  public Bounds bounds() {
    return gross.bounds();
  }

  /**
   * Labels of dyes for the floor whose colour the shop book does not say; the floor is shown
   * without them, which must be said beside the picture.
   */
  public List<String> uncoloured() {
    return uncoloured;
  }

  Region gross() {
    return gross;
  }

  List<Ring> floor() {
    return floor;
  }

  GroundLook slab() {
    return slab;
  }

  /** Over the slab, the topmost first. */
  List<GroundPatch> patches() {
    return patches;
  }

  /** In the order laid. */
  List<DyeFilm> films() {
    return films;
  }

  Sheen sheen() {
    return sheen;
  }

  List<StandingBlock> blocks() {
    return blocks;
  }

  List<WallPiece> walls() {
    return walls;
  }

  boolean isIndoors() {
    return indoors;
  }
}
