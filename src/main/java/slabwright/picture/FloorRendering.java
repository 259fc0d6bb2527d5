package slabwright.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;

/**
 * One picture of a finished floor, ready to be painted in bands. Equal input gives equal pixels,
 * and bands join to the same picture as the whole.
 *
 * <p>What to expect, not what will be: every place that shows one says that the sample panel
 * decides.
 */
public final class FloorRendering {
  /** Pixels of the largest band. */
  public static final int MOST_PIXELS = 12_000_000;

  /** Rows painted at a time; one such is the longest that a cancelled picture goes on. */
  private static final int STRIP = 32;

  /** Free space about a plan, mm. */
  public static final double AROUND = 400;

  private final int width;
  private final int height;
  private final Homography toPixels;
  private final ViewPainter painter;

  FloorRendering(int width, int height, Homography toPixels, ViewPainter painter) {
    if (width < 1 || height < 1 || width > MOST_PIXELS) {
      throw new IllegalArgumentException("a picture of " + width + " x " + height);
    }
    this.width = width;
    this.height = height;
    this.toPixels = toPixels;
    this.painter = painter;
  }

  /**
   * The whole floor area from above, north up, with some space around.
   *
   * @param pixelsPerMm 0.1 shows a centimetre a pixel
   * @param backdrop colour around the floor, {@code #rrggbb}
   */
  public static FloorRendering plan(FloorScene scene, double pixelsPerMm, String backdrop) {
    Bounds b = scene.bounds().grown(AROUND);
    int w = (int) Math.ceil(b.width() * pixelsPerMm);
    int h = (int) Math.ceil(b.height() * pixelsPerMm);
    Affine map = Affine.move(-b.minX(), -b.maxY()).then(Affine.scale(pixelsPerMm, -pixelsPerMm));
    return plan(scene, map, w, h, backdrop);
  }

  /**
   * A window onto the plan.
   *
   * @param toPixels from the site to pixels, x right and y down from the top left corner
   */
  public static FloorRendering plan(
      FloorScene scene, Affine toPixels, int width, int height, String backdrop) {
    Homography h = homography(toPixels);
    PlanPainter painter = new PlanPainter(scene, toPixels, width, LinearColour.ofHex(backdrop));
    return new FloorRendering(width, height, h, painter);
  }

  /** From the way in, at eye height; a picture wider than high shows most. */
  public static FloorRendering fromDoor(FloorScene scene, int width, int height) {
    DoorCamera camera = DoorCamera.of(scene, DoorCamera.wayIn(scene), width, height);
    DoorPainter painter = new DoorPainter(scene, camera, width);
    return new FloorRendering(width, height, camera.toPixels(0), painter);
  }

  /**
   * On a photo.
   *
   * @param photo upright
   * @param floor four places of the floor, site mm, no three in a line
   * @param pixels where the photo shows them, in the same order
   * @param mask corners of what is floor in the photo, pixels; empty for all that the floor reaches
   * @return empty when the points can't be a floor seen by a camera, or no floor is seen
   */
  public static Optional<FloorRendering> onPhoto(
      FloorScene scene, BufferedImage photo, List<Vec> floor, List<Vec> pixels, List<Vec> mask) {
    return PhotoView.of(floor, pixels)
        .map(v -> new PhotoPainter(scene, photo, v.toPhoto(), v.nearest(), mask))
        .filter(PhotoPainter::showsFloor)
        .map(p -> new FloorRendering(photo.getWidth(), photo.getHeight(), p.toPhoto(), p));
  }

  static Homography homography(Affine a) {
    return new Homography(a.a(), a.c(), a.e(), a.b(), a.d(), a.f(), 0, 0, 1);
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** From the floor's plane, site mm, to pixels. */
  public Homography toPixels() {
    return toPixels;
  }

  /** Rows of the largest band that keeps within {@link #MOST_PIXELS}. */
  public int bandRows() {
    return Math.min(height, Math.max(1, MOST_PIXELS / width));
  }

  /**
   * Some rows of the picture.
   *
   * @throws IllegalArgumentException for more pixels than {@link #MOST_PIXELS} or rows outside
   * @throws CancellationException when {@code cancelled} turned true
   */
  public BufferedImage band(int top, int rows, BooleanSupplier cancelled) {
    if (top < 0 || rows < 1 || rows > bandRows() || top + rows > height) {
      throw new IllegalArgumentException(rows + " rows from " + top + " of " + height);
    }
    BufferedImage image = new BufferedImage(width, rows, BufferedImage.TYPE_INT_RGB);
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    pixels(top, rows, pixels, cancelled);
    return image;
  }

  /**
   * All of a picture that is one band.
   *
   * @throws IllegalArgumentException for a picture of more pixels than {@link #MOST_PIXELS}
   * @throws CancellationException when {@code cancelled} turned true
   */
  public BufferedImage whole(BooleanSupplier cancelled) {
    return band(0, height, cancelled);
  }

  /**
   * The pixels of a picture that is one band, opaque sRGB row by row.
   *
   * @throws IllegalArgumentException for a picture of more pixels than {@link #MOST_PIXELS}
   * @throws CancellationException when {@code cancelled} turned true
   */
  public int[] argb(BooleanSupplier cancelled) {
    if (bandRows() < height) {
      throw new IllegalArgumentException(width + " x " + height + " is more than one band");
    }
    int[] pixels = new int[width * height];
    pixels(0, height, pixels, cancelled);
    return pixels;
  }

  private void pixels(int top, int rows, int[] pixels, BooleanSupplier cancelled) {
    IntStream.range(0, (rows + STRIP - 1) / STRIP)
        .parallel()
        .forEach(
            strip -> {
              if (cancelled.getAsBoolean()) {
                throw new CancellationException();
              }
              int from = strip * STRIP;
              int some = Math.min(STRIP, rows - from);
              int[] part = new int[some * width];
              painter.paint(top + from, some, part);
              System.arraycopy(part, 0, pixels, from * width, part.length);
            });
  }

  /**
   * The picture as a PNG file, written band by band.
   *
   * @param caption kept in the file as its description, so that it goes where the picture goes
   * @throws CancellationException when {@code cancelled} turned true
   */
  public void writePng(OutputStream out, String caption, BooleanSupplier cancelled)
      throws IOException {
    try (PngWriter png = new PngWriter(out, width, height, caption)) {
      int most = Math.min(bandRows(), 8 * STRIP);
      int[] pixels = new int[most * width];
      for (int top = 0; top < height; top += most) {
        int rows = Math.min(most, height - top);
        pixels(top, rows, pixels, cancelled);
        png.rows(pixels, rows);
      }
    }
  }

  /** The same in memory. */
  public byte[] png(String caption, BooleanSupplier cancelled) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      writePng(out, caption, cancelled);
    } catch (IOException cannotHappenInMemory) {
      throw new UncheckedIOException(cannotHappenInMemory);
    }
    return out.toByteArray();
  }
}
