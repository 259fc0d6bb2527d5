package slabwright.pdfin.picture;

import java.awt.image.BufferedImage;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;

/** Redraws a photo as seen from above, each pixel from four of the photo's. */
final class PhotoRectifier {
  private final BufferedImage photo;
  private final Homography toPhoto;
  private final Affine placing;
  private final double coarsest;
  private final double facing;

  PhotoRectifier(BufferedImage photo, Homography toPhoto, Affine placing, double coarsest) {
    this.photo = photo;
    this.toPhoto = toPhoto;
    this.placing = placing;
    this.coarsest = coarsest;
    facing = Math.signum(toPhoto.depth(Vec.ZERO));
  }

  BufferedImage image(int columns, int rows) {
    BufferedImage out = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < columns; x++) {
        out.setRGB(x, y, colour(placing.apply(new Vec(x + 0.5, y + 0.5))));
      }
    }
    return out;
  }

  /** Clear beyond the horizon, outside the photo, and where the photo is too coarse. */
  private int colour(Vec floor) {
    boolean behind = toPhoto.depth(floor) * facing <= 0;
    if (behind || RectifiedPhoto.pixel(toPhoto, floor) > coarsest) {
      return 0;
    }
    Vec p = toPhoto.apply(floor).minus(new Vec(0.5, 0.5));
    int x = (int) Math.floor(p.x());
    int y = (int) Math.floor(p.y());
    if (x < 0 || y < 0 || x + 1 >= photo.getWidth() || y + 1 >= photo.getHeight()) {
      return 0;
    }
    double right = p.x() - x;
    double down = p.y() - y;
    int top = mix(photo.getRGB(x, y), photo.getRGB(x + 1, y), right);
    int bottom = mix(photo.getRGB(x, y + 1), photo.getRGB(x + 1, y + 1), right);
    return mix(top, bottom, down);
  }

  private static int mix(int a, int b, double t) {
    int out = 0;
    for (int shift = 0; shift < 32; shift += 8) {
      double v = (a >>> shift & 255) * (1 - t) + (b >>> shift & 255) * t;
      out |= (int) Math.round(v) << shift;
    }
    return out;
  }
}
