package slabwright.picture;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;

/**
 * The finished floor laid into a photo: seen through the photo's homography, lit as the photo's own
 * floor is, only within the mask. The photo's exposure is kept within bounds, for nobody knows how
 * light the old floor is: as much light as the photo shows of it, were it a plain slab.
 */
final class PhotoPainter implements ViewPainter {
  private static final double DARKEST = 0.5;
  private static final double LIGHTEST = 1.15;

  private final BufferedImage photo;
  private final Homography toPhoto;
  private final int width;
  private final FloorPainter floor;
  private final PixelOutline outline;
  private final List<PixelOutline> mask;
  private final PhotoShading shading;
  private final float exposure;

  /**
   * A painter.
   *
   * @param toPhoto from the site to the photo's pixels, its depth positive where the floor is seen
   * @param nearest depth nearer than which nothing is shown
   * @param mask corners of what is floor in the photo; empty for all that the floor reaches
   */
  PhotoPainter(
      FloorScene scene, BufferedImage photo, Homography toPhoto, double nearest, List<Vec> mask) {
    this.photo = photo;
    this.toPhoto = toPhoto;
    width = photo.getWidth();
    floor = new FloorPainter(scene, toPhoto, nearest, width);
    outline = PixelOutline.of(scene.floor(), toPhoto, nearest);
    this.mask = mask.isEmpty() ? List.of() : List.of(PixelOutline.ofPixels(List.of(mask)));
    shading = new PhotoShading(photo, this::shown);
    double slab = GroundLook.SLAB.luminance();
    exposure = (float) Math.max(DARKEST, Math.min(LIGHTEST, shading.median() / slab));
  }

  /** Share of each pixel where floor is seen. */
  private float[] shown(int top, int rows) {
    float[] cover = new float[rows * (width + 2)];
    float[] out = new float[rows * width];
    outline.cover(top, rows, width, cover);
    copy(cover, rows, out, false);
    for (PixelOutline m : mask) {
      Arrays.fill(cover, 0);
      m.cover(top, rows, width, cover);
      copy(cover, rows, out, true);
    }
    return out;
  }

  private void copy(float[] cover, int rows, float[] out, boolean times) {
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < width; x++) {
        float c = cover[y * (width + 2) + x];
        out[y * width + x] = times ? out[y * width + x] * c : c;
      }
    }
  }

  Homography toPhoto() {
    return toPhoto;
  }

  /** Whether any of the floor is seen. */
  boolean showsFloor() {
    return shading.median() > 0;
  }

  @Override
  public void paint(int top, int rows, int[] argb) {
    FloorStrip s = floor.paint(top, rows);
    float[] shown = shown(top, rows);
    photo.getRGB(0, top, width, rows, argb, 0, width);
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < width; x++) {
        int i = y * width + x;
        if (shown[i] > 0) {
          argb[i] = laid(argb[i], s, i, shading.at(x, top + y) * exposure, shown[i]);
        }
      }
    }
  }

  private static int laid(int rgb, FloorStrip s, int i, float light, float share) {
    return LinearColour.argb(
        SeededNoise.mix(PhotoShading.light(rgb >> 16), s.r[i] * light, share),
        SeededNoise.mix(PhotoShading.light(rgb >> 8), s.g[i] * light, share),
        SeededNoise.mix(PhotoShading.light(rgb), s.b[i] * light, share));
  }
}
