package slabwright.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;

/**
 * Paints the floor itself through any view of its plane: ground by kind, then the dye over it, in
 * linear light. Rows are painted in any order and on any thread; each pixel hangs on its place
 * alone.
 */
final class FloorPainter {
  private record Ground(PixelOutline outline, GroundLook look) {}

  private record Film(PixelOutline outline, DyeTable table) {}

  private final int width;
  private final Homography toSite;
  private final double turned;
  private final PixelOutline floor;
  private final GroundLook slab;
  private final List<Ground> patches = new ArrayList<>();
  private final List<Film> films = new ArrayList<>();
  private final float deepening;

  /**
   * A painter of one view.
   *
   * @param nearest depth of the view nearer than which nothing is shown
   */
  FloorPainter(FloorScene scene, Homography toPixels, double nearest, int width) {
    this.width = width;
    toSite = toPixels.inverse();
    turned = Math.abs(determinantOf(toSite));
    floor = PixelOutline.of(scene.floor(), toPixels, nearest);
    slab = scene.slab();
    for (FloorScene.GroundPatch p : scene.patches()) {
      patches.add(new Ground(PixelOutline.of(p.rings(), toPixels, nearest), p.look()));
    }
    for (DyeFilm f : scene.films()) {
      films.add(new Film(outline(scene, f, toPixels, nearest), new DyeTable(f.transmission())));
    }
    deepening = (float) scene.sheen().deepening();
  }

  private PixelOutline outline(FloorScene scene, DyeFilm f, Homography h, double nearest) {
    List<Ring> rings = f.rings();
    return rings.equals(scene.floor()) ? floor : PixelOutline.of(rings, h, nearest);
  }

  /** The determinant: the area of a pixel on the floor is it over the cube of the depth. */
  private static double determinantOf(Homography h) {
    Vec origin = Vec.ZERO;
    double w = h.depth(origin);
    return h.areaScale(origin) * w * w * w;
  }

  /** Paints rows from {@code top} on. */
  FloorStrip paint(int top, int rows) {
    FloorStrip out = new FloorStrip(top, rows, width);
    if (!floor.meets(top, rows, width)) {
      return out;
    }
    float[] cover = new float[rows * (width + 2)];
    float[] rest = new float[rows * width];
    float[] uptake = new float[rows * width];
    floor.cover(top, rows, width, cover);
    for (int y = 0; y < rows; y++) {
      System.arraycopy(cover, y * (width + 2), out.floor, y * width, width);
    }
    for (int i = 0; i < rest.length; i++) {
      rest[i] = out.floor[i] > 0 ? 1 : 0;
    }
    for (Ground p : patches) {
      if (p.outline().meets(top, rows, width)) {
        p.outline().cover(top, rows, width, cover);
        int right = p.outline().right(width);
        lay(out, new GroundTexture(p.look()), cover, p.outline().left(), right, rest, uptake);
      }
    }
    Arrays.fill(cover, 1);
    lay(out, new GroundTexture(slab), cover, 0, width, rest, uptake);
    for (Film f : films) {
      if (f.outline().meets(top, rows, width)) {
        f.outline().cover(top, rows, width, cover);
        f.table().filter(out, f.outline(), cover, uptake, f.outline() == floor);
      }
    }
    deepen(out);
    return out;
  }

  private void deepen(FloorStrip out) {
    for (int i = 0; i < out.r.length; i++) {
      out.r[i] *= deepening;
      out.g[i] *= deepening;
      out.b[i] *= deepening;
    }
  }

  /** Adds one kind of ground to what of each pixel is still free. */
  private void lay(
      FloorStrip out,
      GroundTexture texture,
      float[] cover,
      int left,
      int right,
      float[] rest,
      float[] uptake) {
    for (int y = 0; y < out.rows; y++) {
      double v = out.top + y + 0.5;
      for (int x = left; x < right; x++) {
        int i = y * width + x;
        float share = Math.min(cover[y * (width + 2) + x], rest[i]);
        if (share > 0) {
          look(texture, x + 0.5, v);
          out.r[i] += share * texture.r;
          out.g[i] += share * texture.g;
          out.b[i] += share * texture.b;
          uptake[i] += share * texture.uptake;
          rest[i] -= share;
        }
      }
    }
  }

  private void look(GroundTexture texture, double u, double v) {
    double w = toSite.g() * u + toSite.h() * v + toSite.i();
    double x = (toSite.a() * u + toSite.b() * v + toSite.c()) / w;
    double y = (toSite.d() * u + toSite.e() * v + toSite.f()) / w;
    texture.at(x, y, (float) Math.sqrt(turned / Math.abs(w * w * w)));
  }
}
