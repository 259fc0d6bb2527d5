package slabwright.desk.model.input;

import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * How the site lies on the screen: pixels to a millimetre, and the pixel where the site's origin
 * falls. Site y runs up, screen y down.
 */
public record Viewport(double scale, double originX, double originY) {
  /** Closest and farthest look: a finger's width or two kilometres across the window. */
  private static final double NEAREST = 40;

  private static final double FARTHEST = 0.0004;

  public static final Viewport START = new Viewport(0.05, 200, 500);

  public Vec toScreen(Vec site) {
    return new Vec(originX + site.x() * scale, originY - site.y() * scale);
  }

  public Vec toSite(double x, double y) {
    return new Vec((x - originX) / scale, (originY - y) / scale);
  }

  /** Closer by the factor; the site's point under the pixel stays there. */
  public Viewport zoomed(double factor, double x, double y) {
    double next = Math.max(FARTHEST, Math.min(NEAREST, scale * factor));
    double k = next / scale;
    return new Viewport(next, x - (x - originX) * k, y - (y - originY) * k);
  }

  public Viewport panned(double dx, double dy) {
    return new Viewport(scale, originX + dx, originY + dy);
  }

  /** The whole of the bounds in the middle of a screen box. */
  public static Viewport fitting(Bounds b, Bounds box) {
    if (b.isEmpty() || box.width() < 10 || box.height() < 10) {
      return START;
    }
    double w = Math.max(b.width(), 500);
    double h = Math.max(b.height(), 500);
    double s = Math.max(FARTHEST, Math.min(NEAREST, Math.min(box.width() / w, box.height() / h)));
    Vec mid = b.middle();
    return new Viewport(s, box.middle().x() - mid.x() * s, box.middle().y() + mid.y() * s);
  }

  /** The same scale with the site's point in the middle of a screen box. */
  public Viewport centredOn(Vec site, Bounds box) {
    return new Viewport(
        scale, box.middle().x() - site.x() * scale, box.middle().y() + site.y() * scale);
  }
}
