package slabwright.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * What stands on a floor and around it as columns of pixels see it: uprights stay upright, so each
 * column cuts walls and blocks along one ray of the plan, and what it meets are spans of its rows,
 * the farthest first. The same things hang upside down below the floor for what a glossy floor
 * mirrors.
 */
final class StandingColumns {
  /** Columns looked at for each of pixels, to smooth uprights. */
  static final int SUB = 3;

  private static final double LEAF = 2100;

  /**
   * Rows of one colour.
   *
   * @param from y where it begins
   * @param to y where it ends
   * @param dusk share of its light at its foot, 1 for an even one
   */
  record Span(double from, double to, LinearColour colour, double dusk) {}

  /** What a ray meets, one of these to be sorted by. */
  private record Met(double depth, List<Span> seen, List<Span> mirrored) {}

  /** An upright face above a piece of line. */
  private record Face(Vec a, Vec b, double height, LinearColour colour, boolean block, int owner) {}

  private final DoorCamera camera;
  private final Vec light;
  private final FloorScene scene;
  private final List<Face> faces = new ArrayList<>();
  private final List<List<Span>> seen = new ArrayList<>();
  private final List<List<Span>> mirrored = new ArrayList<>();

  StandingColumns(FloorScene scene, DoorCamera camera, int width) {
    this.camera = camera;
    this.scene = scene;
    light = camera.right().times(-0.6).minus(camera.ahead().times(0.8));
    scene.walls().forEach(this::wall);
    for (int i = 0; i < scene.blocks().size(); i++) {
      block(scene.blocks().get(i), i);
    }
    for (int x = 0; x < width * SUB; x++) {
      column((x + 0.5) / SUB);
    }
  }

  /**
   * What of {@code column} of {@link #SUB} times as many columns is covered, the farthest first.
   */
  List<Span> seen(int column) {
    return seen.get(column);
  }

  /** What a perfectly smooth floor would mirror. */
  List<Span> mirrored(int column) {
    return mirrored.get(column);
  }

  private void wall(WallPiece w) {
    if (w.height() <= 0) {
      return;
    }
    LinearColour colour = w.height() < 500 ? BlockColours.KERB : BlockColours.WALL;
    List<Vec> p = w.foot().points();
    for (int i = 0; i + 1 < p.size(); i++) {
      faces.add(
          new Face(
              p.get(i),
              p.get(i + 1),
              w.height(),
              lit(colour, p.get(i), p.get(i + 1), 1),
              false,
              -1));
    }
    for (slabwright.shape.Line o : w.openings()) {
      List<Vec> q = o.points();
      for (int i = 0; i + 1 < q.size(); i++) {
        // A hair nearer than its wall, so that it lies over it.
        Vec in = q.get(i + 1).minus(q.get(i)).unit().left().times(2);
        Vec a = q.get(i).plus(in);
        Vec b = q.get(i + 1).plus(in);
        faces.add(
            new Face(a, b, Math.min(LEAF, w.height()), lit(BlockColours.LEAF, a, b, 1), false, -1));
      }
    }
  }

  private void block(StandingBlock block, int owner) {
    for (Ring r : block.foot()) {
      for (int i = 0; i < r.points().size(); i++) {
        Vec a = r.points().get(i);
        Vec b = r.points().get((i + 1) % r.points().size());
        faces.add(new Face(a, b, block.height(), lit(block.colour(), a, b, -1), true, owner));
      }
    }
  }

  /** Light from behind the left shoulder, and more from everywhere. */
  private LinearColour lit(LinearColour c, Vec a, Vec b, double side) {
    Vec normal = b.minus(a).unit().left().times(side);
    return c.times(0.72 + 0.18 * Math.max(0, normal.dot(light)) + 0.06 * normal.dot(light));
  }

  private void column(double x) {
    Vec ray = camera.ray(x);
    List<Met> met = new ArrayList<>();
    List<List<double[]>> cuts = new ArrayList<>();
    scene.blocks().forEach(b -> cuts.add(new ArrayList<>()));
    for (int f = 0; f < faces.size(); f++) {
      Face face = faces.get(f);
      double depth = depth(ray, face);
      if (depth > DoorCamera.NEAREST) {
        if (face.block()) {
          cuts.get(face.owner()).add(new double[] {depth, f});
        } else if (isInside(face)) {
          met.add(upright(depth, face, List.of()));
        }
      }
    }
    for (int i = 0; i < cuts.size(); i++) {
      through(scene.blocks().get(i), cuts.get(i), met);
    }
    met.sort(Comparator.comparingDouble(Met::depth).reversed());
    List<Span> front = new ArrayList<>();
    List<Span> below = new ArrayList<>();
    for (Met m : met) {
      front.addAll(m.seen());
      below.addAll(m.mirrored());
    }
    seen.add(front);
    mirrored.add(below);
  }

  /** Whether the eye is on the floor's side of a wall. */
  private boolean isInside(Face f) {
    return f.b().minus(f.a()).cross(camera.eye().minus(f.a())) > 0;
  }

  /** Depth at which a ray crosses the line of a face between its ends; negative when it doesn't. */
  private double depth(Vec ray, Face f) {
    // In plain numbers: asked some hundred thousand times a picture.
    double alongX = f.b().x() - f.a().x();
    double alongY = f.b().y() - f.a().y();
    double toX = f.a().x() - camera.eye().x();
    double toY = f.a().y() - camera.eye().y();
    double cross = ray.x() * alongY - ray.y() * alongX;
    if (cross == 0) {
      return -1;
    }
    double t = (toX * ray.y() - toY * ray.x()) / cross;
    return t < 0 || t >= 1 ? -1 : (toX * alongY - toY * alongX) / cross;
  }

  /** A block's front and top wherever the ray is inside it. */
  private void through(StandingBlock block, List<double[]> cuts, List<Met> met) {
    cuts.sort(Comparator.comparingDouble(c -> c[0]));
    for (int i = 0; i + 1 < cuts.size(); i += 2) {
      double in = cuts.get(i)[0];
      double out = cuts.get(i + 1)[0];
      List<Span> top =
          block.height() < camera.height()
              ? List.of(
                  new Span(
                      camera.y(block.height(), out),
                      camera.y(block.height(), in),
                      block.colour(),
                      1))
              : List.of();
      met.add(upright(in, faces.get((int) cuts.get(i)[1]), top));
    }
  }

  private Met upright(double depth, Face f, List<Span> top) {
    double foot = camera.y(0, depth);
    List<Span> all = new ArrayList<>(top);
    all.add(new Span(camera.y(f.height(), depth), foot, f.colour(), 0.8));
    return new Met(
        depth, all, List.of(new Span(foot, camera.y(-f.height(), depth), f.colour(), 0.8)));
  }
}
