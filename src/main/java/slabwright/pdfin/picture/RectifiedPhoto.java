package slabwright.pdfin.picture;

import java.awt.image.BufferedImage;
import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A slanted photo of a floor laid flat, by the four corners of a rectangle of known size on that
 * floor (a saw-cut bay, a sheet, four chalk marks with equal diagonals).
 *
 * @param picture the floor seen from above, clear where the photo does not reach
 * @param placing from its pixels to millimetres: the rectangle's first corner at the origin, its
 *     first side along x, its second side up
 * @param mmPerPixel floor length of one pixel of the photo: the coarsest within the rectangle
 * @param caution what the picture does not show truly; to be said wherever it is shown
 */
public record RectifiedPhoto(Picture picture, Affine placing, double mmPerPixel, Message caution) {
  /** What is shown about the rectangle, in times its longer side. */
  private static final double AROUND = 0.75;

  private static final int MOST_PIXELS_A_SIDE = 3000;

  /**
   * A pixel of the photo that covers this many times the coarsest in the rectangle is not shown.
   */
  private static final double TOO_COARSE = 6;

  /**
   * Lays the photo flat.
   *
   * @param corners of the rectangle in the photo's pixels, in walking order, first side first
   * @param width the true length of the first side, mm
   * @param height the true length of the second side, mm
   */
  public static Result<RectifiedPhoto> of(
      Picture photo, List<Vec> corners, double width, double height) {
    if (!(width > 0) || !(height > 0)) {
      return Result.refused(Message.of("pdfin.rectified.sides-not-given"));
    }
    List<Vec> floor =
        List.of(Vec.ZERO, new Vec(width, 0), new Vec(width, height), new Vec(0, height));
    return Homography.of(floor, corners)
        .<Result<RectifiedPhoto>>map(h -> Result.ok(flat(photo, h, floor)))
        .orElseGet(() -> Result.refused(Message.of("pdfin.rectified.no-rectangle")));
  }

  private static RectifiedPhoto flat(Picture photo, Homography toPhoto, List<Vec> floor) {
    double finest = floor.stream().mapToDouble(p -> pixel(toPhoto, p)).min().orElseThrow();
    double coarsest = floor.stream().mapToDouble(p -> pixel(toPhoto, p)).max().orElseThrow();
    Bounds rectangle = Bounds.of(floor);
    Bounds shown = rectangle.grown(AROUND * Math.max(rectangle.width(), rectangle.height()));
    double step = Math.max(finest, Math.max(shown.width(), shown.height()) / MOST_PIXELS_A_SIDE);
    Affine placing = Affine.scale(step, -step).then(Affine.move(shown.minX(), shown.maxY()));
    int columns = (int) Math.ceil(shown.width() / step);
    int rows = (int) Math.ceil(shown.height() / step);
    PhotoRectifier warp =
        new PhotoRectifier(photo.image(), toPhoto, placing, TOO_COARSE * coarsest);
    BufferedImage image = warp.image(columns, rows);
    return new RectifiedPhoto(new Picture(image), placing, coarsest, caution(coarsest));
  }

  /** The floor length that one pixel of the photo shows about a point, the worst way round. */
  static double pixel(Homography toPhoto, Vec p) {
    return 1 / toPhoto.leastScale(p);
  }

  private static Message caution(double mm) {
    return Message.of("pdfin.rectified.caution", Math.ceil(mm));
  }
}
