package slabwright.inlay.proof;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** The tests' own measure of how alike a graphic is to itself in the best wrong pose. */
final class Symmetry {
  private static final int ACROSS = 300;

  /** Overlaps, 0 to 1: mirrored with any turn, and turned by more than 5 degrees. */
  record Alike(double mirrored, double turned) {
    double worst() {
      return Math.max(mirrored, turned);
    }
  }

  private Symmetry() {}

  static Alike of(Region region) {
    Vec middle = centroid(region);
    double reach =
        region.rings().stream()
            .flatMap(r -> r.points().stream())
            .mapToDouble(p -> p.distanceTo(middle))
            .max()
            .orElseThrow();
    Path2D path = path(region);
    byte[] upright = raster(path, middle, reach, 0, false);
    double mirrored = 0;
    double turned = 0;
    for (int degrees = 0; degrees < 360; degrees += 3) {
      mirrored = Math.max(mirrored, share(upright, raster(path, middle, reach, degrees, true)));
      if (degrees > 5 && degrees < 355) {
        turned = Math.max(turned, share(upright, raster(path, middle, reach, degrees, false)));
      }
    }
    return new Alike(mirrored, turned);
  }

  private static Vec centroid(Region region) {
    Vec sum = Vec.ZERO;
    double area = 0;
    for (Ring r : region.rings()) {
      RingMoments s = RingMoments.of(r);
      double signed = r.signedArea();
      sum = sum.plus(s.centroid().times(signed));
      area += signed;
    }
    return sum.times(1 / area);
  }

  private static Path2D path(Region region) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (Ring r : region.rings()) {
      path.moveTo(r.points().get(0).x(), r.points().get(0).y());
      r.points().forEach(p -> path.lineTo(p.x(), p.y()));
      path.closePath();
    }
    return path;
  }

  private static byte[] raster(
      Path2D path, Vec middle, double reach, double degrees, boolean mirror) {
    BufferedImage image = new BufferedImage(ACROSS, ACROSS, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    AffineTransform at = AffineTransform.getTranslateInstance(ACROSS / 2.0, ACROSS / 2.0);
    at.scale((mirror ? -1 : 1) * ACROSS / 2.0 / reach, ACROSS / 2.0 / reach);
    at.rotate(Math.toRadians(degrees));
    at.translate(-middle.x(), -middle.y());
    g.setTransform(at);
    g.setColor(Color.WHITE);
    g.fill(path);
    g.dispose();
    return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
  }

  private static double share(byte[] a, byte[] b) {
    int both = 0;
    int either = 0;
    for (int i = 0; i < a.length; i++) {
      both += a[i] != 0 && b[i] != 0 ? 1 : 0;
      either += a[i] != 0 || b[i] != 0 ? 1 : 0;
    }
    return both / (double) either;
  }
}
