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

/** A floor as it should look, as pixels for a printed page: a few hundred kilobytes at most. */
final class ExpectedFloor {
  /** Pixels of the longer side: about 200 to the inch over a hand's page. */
  private static final double LONGEST = 1400;

  private static final int DOOR_WIDE = 1000;

  /** As high as wide times this, as a room is seen. */
  private static final double DOOR_SHAPE = 0.625;

  private static final float QUALITY = 0.82f;
  private static final String PAPER = "#ffffff";

  private final FloorScene scene;
  private final Raster above;

  ExpectedFloor(AreaResult area, ShopBook book) {
    scene = FloorScene.of(area.takeoff(), area.inlays(), book);
    above = painted();
  }

  /** From straight above, over the outline's box in the site's frame. */
  Raster fromAbove() {
    return above;
  }

  private Raster painted() {
    Bounds b = scene.bounds();
    double scale = LONGEST / Math.max(b.width(), b.height());
    int wide = (int) Math.max(1, Math.round(b.width() * scale));
    int high = (int) Math.max(1, Math.round(b.height() * scale));
    Affine map =
        Affine.move(-b.minX(), -b.maxY()).then(Affine.scale(wide / b.width(), -high / b.height()));
    return new Raster(b, encoded(FloorRendering.plan(scene, map, wide, high, PAPER)));
  }

  /** From the way in, as wide as its column. */
  Block fromDoor() {
    int high = (int) Math.round(DOOR_WIDE * DOOR_SHAPE);
    return new View(encoded(FloorRendering.fromDoor(scene, DOOR_WIDE, high)));
  }

  /** Dyes for the floor that it is shown without, for no book says their colour. */
  Stream<String> uncoloured() {
    return scene.uncoloured().stream();
  }

  private static EncodedPicture encoded(FloorRendering shown) {
    return EncodedPicture.of(shown.whole(() -> false), QUALITY);
  }

  /** The view in a column. */
  private record View(EncodedPicture picture) implements Block {
    @Override
    public List<Slice> slices(TypeSizes type, double width) {
      double high = width * DOOR_SHAPE;
      return List.of(
          new Slice(high + 2, false, List.of(new Raster(new Bounds(0, 0, width, high), picture))));
    }
  }
}
