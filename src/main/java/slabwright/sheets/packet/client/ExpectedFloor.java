package slabwright.sheets.packet.client;

import java.util.List;
import java.util.stream.Stream;
import slabwright.drawing.EncodedPicture;
import slabwright.drawing.Raster;
import slabwright.picture.FloorRendering;
import slabwright.picture.FloorScene;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;
import slabwright.work.AreaResult;
import slabwright.work.book.ShopBook;

/**
 * A floor as it should look, as pixels for a printed page: a few hundred kilobytes at most. Each
 * picture is painted when it is asked for, as fine as it is printed.
 */
final class ExpectedFloor {
  /** 200 pixels to the inch: finer is not told apart at arm's length. */
  private static final double PIXELS_PER_MM = 200 / 25.4;

  /** As high as wide times this, as a room is seen. */
  private static final double DOOR_SHAPE = 0.625;

  private static final float QUALITY = 0.82f;
  private static final String PAPER = "#ffffff";

  private static final EncodedPicture NONE = EncodedPicture.ofJpeg(new byte[0]);

  private final FloorScene scene;
  private final boolean painted;

  private ExpectedFloor(FloorScene scene, boolean painted) {
    this.scene = scene;
    this.painted = painted;
  }

  ExpectedFloor(AreaResult area, ShopBook book) {
    this(FloorScene.of(area.takeoff(), area.inlays(), book), true);
  }

  /** The same with nothing painted, to try how it fills a page. */
  ExpectedFloor tried() {
    return new ExpectedFloor(scene, false);
  }

  /**
   * From straight above, over the outline's box in the site's frame.
   *
   * @param scale millimetres of paper to one of the floor
   */
  Raster fromAbove(double scale) {
    Bounds b = scene.bounds();
    if (!painted) {
      return new Raster(b, NONE);
    }
    int wide = pixels(b.width() * scale);
    int high = pixels(b.height() * scale);
    Affine map =
        Affine.move(-b.minX(), -b.maxY()).then(Affine.scale(wide / b.width(), -high / b.height()));
    return new Raster(b, encoded(FloorRendering.plan(scene, map, wide, high, PAPER)));
  }

  /** From the way in, as wide as its column. */
  Block fromDoor() {
    return new View(this);
  }

  /** Dyes for the floor that it is shown without, for no book says their colour. */
  Stream<String> uncoloured() {
    return scene.uncoloured().stream();
  }

  private EncodedPicture door(double width, double height) {
    return painted ? encoded(FloorRendering.fromDoor(scene, pixels(width), pixels(height))) : NONE;
  }

  private static int pixels(double mm) {
    return (int) Math.max(1, Math.round(mm * PIXELS_PER_MM));
  }

  private static EncodedPicture encoded(FloorRendering shown) {
    return EncodedPicture.of(shown.whole(() -> false), QUALITY);
  }

  /** The view in a column. */
  private record View(ExpectedFloor floor) implements Block {
    @Override
    public List<Slice> slices(TypeSizes type, double width) {
      double high = width * DOOR_SHAPE;
      Raster seen = new Raster(new Bounds(0, 0, width, high), floor.door(width, high));
      return List.of(new Slice(high + 2, false, List.of(seen)));
    }
  }
}
