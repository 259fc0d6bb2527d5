package slabwright.inlay.artwork.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.units.Message;

/**
 * A picture that lies in a drawing, traced as a picture by itself is: areas of one colour each in
 * paint order, in pixels of the picture, x right, y down from its top left.
 *
 * @param width of the picture, pixels
 * @param height as the width
 * @param paper what its paper looks like, when that can be told; it is the first of the areas then
 * @param doubt what 95 % of its edges may be off at most, pixels
 */
public record TracedPicture(
    double width, double height, List<Area> areas, Optional<String> paper, double doubt) {
  private static final double LEAST_PIXELS = 4;
  private static final int MOST_BORDERS = 20_000;

  /** What has one colour, {@code #rrggbb}; by the even-odd rule. */
  public record Area(Path2D outline, String hex) {
    /** The outline as the {@code d} of an SVG path, to a thousandth of a pixel. */
    public String pathData() {
      StringBuilder d = new StringBuilder();
      double[] c = new double[6];
      for (PathIterator it = outline.getPathIterator(null, 0.01); !it.isDone(); it.next()) {
        switch (it.currentSegment(c)) {
          case PathIterator.SEG_MOVETO -> point(d.append('M'), c);
          case PathIterator.SEG_LINETO -> point(d.append('L'), c);
          default -> d.append('Z');
        }
      }
      return d.toString();
    }

    private static void point(StringBuilder d, double[] c) {
      d.append(Math.rint(c[0] * 1000) / 1000).append(' ').append(Math.rint(c[1] * 1000) / 1000);
    }
  }

  public TracedPicture {
    areas = List.copyOf(areas);
  }

  /**
   * Traces a picture file.
   *
   * @throws RefusedArtworkException when it is damaged, too large, or no drawing of few colours
   */
  public static TracedPicture of(byte[] file) {
    try {
      Pixels pixels = PixelsBuilder.of(new BitmapReader(file).read(), Optional.empty(), List.of());
      return of(pixels);
    } catch (IOException broken) {
      throw new RefusedArtworkException(
          Reason.NOT_UNDERSTOOD, Message.of("inlay.bitmap-reader.damaged"));
    }
  }

  private static TracedPicture of(Pixels pixels) {
    int[] palette = new PaletteFinder(pixels).find(OptionalInt.empty()).colours();
    LabelMap map = ShadeMerging.run(pixels, PixelLabeller.label(pixels, palette));
    SpeckRemoval.run(map, LEAST_PIXELS);
    PictureTrace trace = new PictureTrace(pixels, map, 0);
    if (trace.chains().size() > MOST_BORDERS) {
      throw new RefusedArtworkException(
          Reason.TOO_LARGE,
          Message.of("inlay.picture-artwork-reader.too-many-spots", MOST_BORDERS));
    }
    double step = pixels.thinned();
    boolean clear = pixels.seeThrough() >= 0;
    BackgroundFinder finder = new BackgroundFinder(map);
    OptionalInt paper = clear ? finder.chosen(PixelColour.hex(pixels.seeThrough())) : finder.told();
    List<Area> areas = new ArrayList<>();
    Optional<String> hex = Optional.empty();
    if (paper.isPresent() && !clear) {
      hex = Optional.of(PixelColour.hex(map.colour(paper.getAsInt())));
      Rectangle2D all = new Rectangle2D.Double(0, 0, step * map.width(), step * map.height());
      areas.add(new Area(new Path2D.Double(all), hex.get()));
    }
    List<Path2D> outlines = new RingAssembly(trace).outlines(map.palette().length);
    for (int k = 0; k < outlines.size(); k++) {
      Path2D outline = outlines.get(k);
      if (outline.getCurrentPoint() != null && !paper.equals(OptionalInt.of(k))) {
        outline.transform(AffineTransform.getScaleInstance(step, step));
        areas.add(new Area(outline, PixelColour.hex(map.colour(k))));
      }
    }
    return new TracedPicture(
        step * map.width(), step * map.height(), areas, hex, step * trace.doubt());
  }
}
