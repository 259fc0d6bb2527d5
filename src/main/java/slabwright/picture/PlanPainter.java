package slabwright.picture;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;

/**
 * The floor seen from straight above, as a model with its lid off: walls cut through, blocks with a
 * shadow, light from the upper left.
 */
final class PlanPainter implements ViewPainter {
  /** Where the shadow of something 1 mm high ends, site mm. */
  private static final Vec LIGHT = new Vec(0.30, -0.38);

  /** Walls are cut at this height, and so is the shadow of what is higher, mm. */
  private static final double CUT = 800;

  /** Shadows of several lengths make a soft edge; a step about every so many pixels. */
  private static final double STEP = 4;

  private static final int FEWEST_STEPS = 6;
  private static final int MOST_STEPS = 24;

  private static final double TOP_RIM = 22;

  /** Something flat of one colour. */
  private record Flat(PixelOutline outline, LinearColour colour) {}

  private final int width;
  private final LinearColour backdrop;
  private final FloorPainter floor;
  private final PlanHighlight highlight;
  private final List<PixelOutline> shadows = new ArrayList<>();
  private final List<Flat> flats = new ArrayList<>();

  PlanPainter(FloorScene scene, Affine toPixels, int width, LinearColour backdrop) {
    this.width = width;
    this.backdrop = backdrop;
    Homography h = FloorRendering.homography(toPixels);
    floor = new FloorPainter(scene, h, 0.5, width);
    highlight = new PlanHighlight(scene.bounds(), h.inverse(), scene.sheen().gloss());
    Region walls = WallSurroundings.cut(scene.gross(), scene.walls());
    int steps = steps(toPixels);
    for (int step = 1; step <= steps; step++) {
      double share = step / (double) steps;
      List<Ring> dark = new ArrayList<>();
      if (scene.isIndoors()) {
        dark.addAll(swept(walls.rings(), CUT * share));
      }
      scene.blocks().forEach(b -> dark.addAll(swept(b.foot(), Math.min(CUT, b.height()) * share)));
      shadows.add(PixelOutline.of(dark, h, 0.5));
    }
    WallSurroundings.kerbs(scene.gross(), scene.walls())
        .ifPresent(k -> flats.add(flat(k.rings(), h, BlockColours.KERB)));
    for (StandingBlock b : scene.blocks()) {
      flats.add(flat(b.foot(), h, b.colour().times(0.62)));
      flats.add(flat(b.top(TOP_RIM), h, b.colour()));
    }
    flats.add(flat(walls.rings(), h, BlockColours.CUT_WALL));
    for (WallPiece p : scene.walls()) {
      p.openings().forEach(o -> flats.add(flat(sill(o), h, BlockColours.SILL)));
    }
  }

  private static int steps(Affine toPixels) {
    double longest = CUT * LIGHT.length() * Math.sqrt(Math.abs(toPixels.determinant()));
    return (int) Math.max(FEWEST_STEPS, Math.min(MOST_STEPS, Math.round(longest / STEP)));
  }

  /** The sill of a doorway, outside the outline, which has the floor to its left. */
  private static List<Ring> sill(Line gap) {
    List<Vec> points = new ArrayList<>(gap.points());
    Vec out = points.get(points.size() - 1).minus(points.get(0)).unit().left();
    Vec away = out.times(-WallSurroundings.WALL);
    points.add(points.get(points.size() - 1).plus(away));
    points.add(points.get(0).plus(away));
    return List.of(new Ring(points));
  }

  private static Flat flat(List<Ring> rings, Homography h, LinearColour colour) {
    return new Flat(PixelOutline.of(rings, h, 0.5), colour);
  }

  /** What the shadow of a foot covers: the foot, the foot moved, and all between. */
  private static List<Ring> swept(List<Ring> rings, double height) {
    Vec way = LIGHT.times(height);
    List<Ring> all = new ArrayList<>(rings);
    for (Ring r : rings) {
      all.add(r.map(Affine.move(way.x(), way.y())));
      for (int i = 0; i < r.points().size(); i++) {
        Vec a = r.points().get(i);
        Vec b = r.points().get((i + 1) % r.points().size());
        Ring side = new Ring(List.of(a, b, b.plus(way), a.plus(way)));
        all.add(side.signedArea() < 0 ? side.reversed() : side);
      }
    }
    return all;
  }

  @Override
  public void paint(int top, int rows, int[] argb) {
    FloorStrip strip = floor.paint(top, rows);
    float[] cover = new float[rows * (width + 2)];
    float[] shadow = shadow(top, rows, cover);
    light(strip, shadow);
    for (Flat f : flats) {
      if (f.outline().meets(top, rows, width)) {
        f.outline().cover(top, rows, width, cover);
        lay(strip, f, cover);
      }
    }
    for (int i = 0; i < argb.length; i++) {
      argb[i] = LinearColour.argb(strip.r[i], strip.g[i], strip.b[i]);
    }
  }

  private float[] shadow(int top, int rows, float[] cover) {
    float[] sum = new float[rows * width];
    for (PixelOutline s : shadows) {
      if (s.meets(top, rows, width)) {
        s.cover(top, rows, width, cover);
        int right = s.right(width);
        for (int y = 0; y < rows; y++) {
          for (int x = s.left(); x < right; x++) {
            sum[y * width + x] += cover[y * (width + 2) + x] / shadows.size();
          }
        }
      }
    }
    return sum;
  }

  /** Shadow and gloss on the floor, and the backdrop where there is none. */
  private void light(FloorStrip s, float[] shadow) {
    float[] around = {(float) backdrop.r(), (float) backdrop.g(), (float) backdrop.b()};
    for (int y = 0; y < s.rows; y++) {
      for (int x = 0; x < width; x++) {
        int i = y * width + x;
        float on = s.floor[i];
        float dark = shadow[i];
        float shine = on > 0 ? highlight.at(x + 0.5, s.top + y + 0.5) * (1 - 0.8f * dark) : 0;
        s.r[i] = mixed(around[0], s.r[i] * (1 - 0.56f * dark) + shine, on);
        s.g[i] = mixed(around[1], s.g[i] * (1 - 0.53f * dark) + shine, on);
        s.b[i] = mixed(around[2], s.b[i] * (1 - 0.48f * dark) + shine, on);
      }
    }
  }

  /** Ground at a rim is summed whole, whatever the share of its pixel; so it is mixed by share. */
  private static float mixed(float around, float ground, float share) {
    return around + (ground - around) * share;
  }

  private void lay(FloorStrip s, Flat flat, float[] cover) {
    LinearColour colour = flat.colour();
    int right = flat.outline().right(width);
    float r = (float) colour.r();
    float g = (float) colour.g();
    float b = (float) colour.b();
    for (int y = 0; y < s.rows; y++) {
      for (int x = flat.outline().left(); x < right; x++) {
        float c = cover[y * (width + 2) + x];
        if (c > 0) {
          int i = y * width + x;
          s.r[i] = mixed(s.r[i], r, c);
          s.g[i] = mixed(s.g[i], g, c);
          s.b[i] = mixed(s.b[i], b, c);
        }
      }
    }
  }

  /** Where the light of a high window lies on a sealed floor: two soft bars across it. */
  private record PlanHighlight(Bounds floor, Homography toSite, double gloss) {
    float at(double u, double v) {
      double x = toSite.a() * u + toSite.b() * v + toSite.c();
      double y = toSite.d() * u + toSite.e() * v + toSite.f();
      double along = (x - floor.minX() - 0.55 * (y - floor.minY())) / floor.width();
      double bars = bump((along - 0.18) / 0.10) + 0.7 * bump((along - 0.52) / 0.07);
      return (float) (gloss * (0.004 + 0.065 * bars));
    }

    private static double bump(double t) {
      double d = 1 + t * t;
      return 1 / (d * d);
    }
  }
}
