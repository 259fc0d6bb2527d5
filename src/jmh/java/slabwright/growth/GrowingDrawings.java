package slabwright.growth;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.shape.FillRule;
import slabwright.shape.Layer;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Invented drawings of so many corners; the same ones for the same number. */
final class GrowingDrawings {
  private static final int WAVES = 200;
  private static final int ISLAND = 100;

  /** Of an island and the sea about it, mm. */
  private static final double CELL = 60;

  private GrowingDrawings() {}

  /** Wavy rings of 200 sides, strewn so that each overlaps a few others. */
  static List<Layer> overlapping(int corners) {
    Random random = new Random(1);
    int rings = corners / WAVES;
    double side = 1000 * Math.sqrt(rings);
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i < rings; i++) {
      Vec at = new Vec(random.nextDouble() * side, random.nextDouble() * side);
      Ring ring = wavy(at, 500 + 400 * random.nextDouble(), WAVES);
      layers.add(new Layer(i, List.of(ring), FillRule.NONZERO));
    }
    return layers;
  }

  private static Ring wavy(Vec middle, double radius, int sides) {
    List<Vec> points = new ArrayList<>();
    for (int k = 0; k < sides; k++) {
      double a = 2 * Math.PI * k / sides;
      double r = radius * (1 + 0.15 * Math.sin(9 * a));
      points.add(middle.plus(new Vec(r * Math.cos(a), r * Math.sin(a))));
    }
    return new Ring(points);
  }

  /** More and more islands of 100 corners each, in two colours; a hundred abreast is 6 m. */
  static List<DyeLayer> islands(int corners) {
    Random random = new Random(2);
    int count = corners / ISLAND;
    int across = (int) Math.ceil(Math.sqrt(count));
    List<List<Ring>> inks = List.of(new ArrayList<>(), new ArrayList<>());
    for (int i = 0; i < count; i++) {
      Vec at = new Vec((i % across + 0.5) * CELL, (i / across + 0.5) * CELL);
      double radius = CELL * (0.2 + 0.15 * random.nextDouble());
      inks.get(random.nextInt(2)).add(wavy(at, radius, ISLAND));
    }
    return List.of(
        new DyeLayer("sand", 70, Region.of(inks.get(0), FillRule.NONZERO)),
        new DyeLayer("moss", 40, Region.of(inks.get(1), FillRule.NONZERO)));
  }

  /** Islands as large as ever, whose shores are more and more rugged; 5 m wide. */
  static List<DyeLayer> coast(int corners) {
    Random random = new Random(3);
    List<Ring> shores = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      Vec at = new Vec((i % 4 + 0.5) * 1250, (i / 4 + 0.5) * 1250);
      shores.add(shore(random, at, 560, corners / 16));
    }
    return List.of(new DyeLayer("sea green", 50, Region.of(shores, FillRule.NONZERO)));
  }

  /** A ring whose sides are broken at their middles again and again. */
  static Ring shore(Random random, Vec middle, double radius, int sides) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double r = radius * (0.7 + 0.3 * random.nextDouble());
      double a = i * Math.PI / 3;
      points.add(middle.plus(new Vec(Math.cos(a), Math.sin(a)).times(r)));
    }
    while (points.size() < sides) {
      List<Vec> finer = new ArrayList<>(points.size() * 2);
      int left = sides - points.size();
      for (int i = 0; i < points.size(); i++) {
        Vec a = points.get(i);
        Vec b = points.get((i + 1) % points.size());
        finer.add(a);
        if (i < left) {
          double aside = 0.15 * Math.max(-1.5, Math.min(1.5, random.nextGaussian()));
          finer.add(a.towards(b, 0.5).plus(b.minus(a).left().times(aside)));
        }
      }
      points = finer;
    }
    return new Ring(points);
  }

  /** A PNG of so many pixels: dots of one size, so that their number grows with it. */
  static byte[] dots(int pixels) {
    int side = (int) Math.round(Math.sqrt(pixels));
    BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, side, side);
    Random random = new Random(4);
    int across = side / 50;
    for (int i = 0; i < across * across; i++) {
      Vec at = new Vec((i % across + 0.5) * 50, (i / across + 0.5) * 50);
      g.setColor(random.nextBoolean() ? new Color(0x2a5078) : new Color(0xc49a3c));
      g.fill(path(wavy(at, 10 + 8 * random.nextDouble(), 60)));
    }
    g.dispose();
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", png);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return png.toByteArray();
  }

  private static Path2D path(Ring ring) {
    Path2D path = new Path2D.Double();
    Vec first = ring.points().get(0);
    path.moveTo(first.x(), first.y());
    ring.points().forEach(p -> path.lineTo(p.x(), p.y()));
    path.closePath();
    return path;
  }
}
