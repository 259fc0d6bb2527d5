package slabwright.inlay.artwork.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.DrawnOutline;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.inlay.artwork.OutlinesResult;
import slabwright.inlay.artwork.PaintedPage;
import slabwright.inlay.artwork.PathFlattener;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;

/**
 * The outlines that a picture of a drawing shows, such as a scan: areas with their colour, and thin
 * drawn lines as the lines along their middle. How large the drawing is meant to be no picture
 * says.
 */
public final class PictureOutlinesReader {
  /** What is thinner than this, in pixels, and surrounds something, is a drawn line. */
  private static final double WIDEST_LINE = 6;

  /** Pixels that an edge may be off, however clear it looks: our own choice, no source. */
  private static final double LEAST_DOUBT = 0.3;

  private static final double FLAT = 0.02;

  private static final double UNSIZED_MM = 20;

  private final double mmPerPixel;
  private final String layer;
  private final List<DrawnOutline> outlines = new ArrayList<>();
  private double halfPen;

  private PictureOutlinesReader(double mmPerPixel, String layer) {
    this.mmPerPixel = mmPerPixel;
    this.layer = layer;
  }

  /**
   * Reads a picture as small as if it had been fitted to a page, whatever the job: it states no
   * size.
   *
   * @param name what to call it in sentences
   */
  public static OutlinesResult unsized(byte[] picture, String name) {
    return read(picture, name, UNSIZED_MM, DrawnOutlines.UNSIZED);
  }

  /**
   * Reads a picture of a page whose longer side is {@code size} mm.
   *
   * @param name what to call it in sentences
   */
  public static OutlinesResult ofSize(byte[] picture, String name, double size) {
    return read(picture, name, size, "");
  }

  private static OutlinesResult read(byte[] picture, String name, double size, String layer) {
    try {
      TracedPicture traced = TracedPicture.of(picture);
      double k = size / Math.max(traced.width(), traced.height());
      return new PictureOutlinesReader(k, layer).drawn(traced, name);
    } catch (RefusedArtworkException e) {
      return e.refusal(name);
    }
  }

  private DrawnOutlines drawn(TracedPicture traced, String name) {
    AffineTransform toMm = AffineTransform.getScaleInstance(mmPerPixel, mmPerPixel);
    List<TracedPicture.Area> areas = traced.areas();
    for (TracedPicture.Area area :
        areas.subList(traced.paper().isPresent() ? 1 : 0, areas.size())) {
      List<Ring> rings = PathFlattener.rings(area.outline(), toMm, FLAT * mmPerPixel);
      FillRule rule =
          area.outline().getWindingRule() == PathIterator.WIND_EVEN_ODD
              ? FillRule.EVEN_ODD
              : FillRule.NONZERO;
      Region.of(rings, rule).parts().forEach(part -> add(part, area.hex()));
    }
    double doubt = Math.max(LEAST_DOUBT, traced.doubt()) * mmPerPixel + halfPen;
    return new DrawnOutlines(name, "", outlines, List.of(), List.of(), PaintedPage.FILLS, doubt);
  }

  private void add(Region part, String hex) {
    double thick = 2 * part.area() / part.boundaryLength();
    if (part.holes().isEmpty() || thick > WIDEST_LINE * mmPerPixel) {
      outlines.add(new DrawnOutline(part.rings(), FillRule.EVEN_ODD, Optional.of(hex), layer));
      return;
    }
    halfPen = Math.max(halfPen, thick / 2);
    // the middle of one line round one thing is its outer edge brought in, which keeps corners
    boolean single = part.holes().size() == 1;
    for (Ring ring : single ? part.shells() : part.holes()) {
      for (Ring middle :
          Region.of(ring).offset(single ? -thick / 2 : thick / 2, FLAT * mmPerPixel).shells()) {
        outlines.add(new DrawnOutline(List.of(middle), FillRule.NONZERO, Optional.empty(), layer));
      }
    }
  }
}
