package slabwright.inlay.artwork.picture;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkBuilder;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkPage;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.PaintedShape;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Traces a picture to the regions that any other graphic gives: few clean colours, outlines placed
 * within the pixels of their smoothed edges, neighbours sharing their border.
 */
public final class PictureArtworkReader {
  private static final double INCH = 25.4;
  private static final double FOOT = 304.8;
  private static final int MOST_BYTES = 96 << 20;

  /** Spots narrower than this are left out when nothing is stated: our own choice, no source. */
  private static final double SPECK_MM = 2;

  /** Spots of fewer pixels than this are no drawing but noise. */
  private static final double LEAST_PIXELS = 4;

  /** Borders beyond which this is no drawing of few colours: a photograph, or noise. */
  private static final int MOST_SPOTS = 60_000;

  private final ArtworkOptions options;
  private final TraceSettings settings;
  private final WarningCollector notes = new WarningCollector();

  private PictureArtworkReader(ArtworkOptions options, TraceSettings settings) {
    this.options = options;
    this.settings = settings;
  }

  /**
   * Traces a picture file.
   *
   * @throws IOException when the file can't be read at all
   */
  public static ArtworkResult read(Path file, ArtworkOptions options, TraceSettings settings)
      throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return read(in, String.valueOf(file.getFileName()), options, settings);
    }
  }

  /**
   * Traces a picture.
   *
   * @param name what to call it in sentences
   * @throws IOException when the stream breaks; a damaged picture is refused
   */
  public static ArtworkResult read(
      InputStream picture, String name, ArtworkOptions options, TraceSettings settings)
      throws IOException {
    byte[] bytes = picture.readNBytes(MOST_BYTES + 1);
    try {
      if (bytes.length > MOST_BYTES) {
        throw new RefusedArtworkException(
            Reason.TOO_LARGE,
            Message.of("inlay.picture-artwork-reader.too-large", MOST_BYTES >> 20));
      }
      options.checkWidth();
      BufferedImage image = new BitmapReader(bytes).read();
      Pixels pixels = PixelsBuilder.of(image, asked(settings), settings.corners());
      return new PictureArtworkReader(options, settings).trace(pixels, name);
    } catch (RefusedArtworkException e) {
      return e.refusal(name);
    }
  }

  private static Optional<String> asked(TraceSettings settings) {
    return settings.background().filter(hex -> !hex.isEmpty());
  }

  private Artwork trace(Pixels pixels, String name) {
    PaletteFinder.Found found = new PaletteFinder(pixels).find(settings.colours());
    int[] palette = found.colours();
    LabelMap map = ShadeMerging.run(pixels, PixelLabeller.label(pixels, palette));
    if (map.palette().length < 2) {
      throw new RefusedArtworkException(
          Reason.NOTHING_PAINTED, Message.of("inlay.picture-artwork-reader.one-colour"));
    }
    int removed = SpeckRemoval.run(map, LEAST_PIXELS);
    OptionalInt paper = paper(map, pixels);
    removed += SpeckRemoval.run(map, speck(map, paper));
    sayColours(found, removed);
    PictureTrace trace = new PictureTrace(pixels, map, settings.roundness());
    if (trace.chains().size() > MOST_SPOTS) {
      throw new RefusedArtworkException(
          Reason.TOO_LARGE, Message.of("inlay.picture-artwork-reader.too-many-spots", MOST_SPOTS));
    }
    List<PaintedShape> shapes = shapes(pixels, map, trace, paper);
    ArtworkPage page =
        new ArtworkPage(
            pixels.width(),
            pixels.height(),
            pixels.thinned(),
            paper.isPresent() && pixels.seeThrough() < 0);
    Artwork artwork = new ArtworkBuilder(shapes, page, options, notes).build(name);
    return doubtful(artwork, pixels, trace.doubt() * pixels.thinned() * artwork.mmPerPx());
  }

  private static Artwork doubtful(Artwork artwork, Pixels pixels, double doubt) {
    Message said =
        Message.of(
            "inlay.picture-artwork-reader.doubt",
            pixels.width() * pixels.thinned(),
            pixels.height() * pixels.thinned(),
            artwork.mmPerPx(),
            artwork.mmPerPx() / INCH,
            doubt,
            doubt / INCH,
            artwork.painted().width() / 1000,
            artwork.painted().width() / FOOT);
    return artwork.traced(doubt, new ArtworkWarning(Kind.TRACED, said, Optional.empty()));
  }

  private OptionalInt paper(LabelMap map, Pixels pixels) {
    BackgroundFinder finder = new BackgroundFinder(map);
    if (pixels.seeThrough() >= 0 && asked(settings).isEmpty()) {
      return finder.chosen(PixelColour.hex(pixels.seeThrough()));
    }
    OptionalInt paper = finder.find(settings.background());
    if (paper.isEmpty() && settings.background().isEmpty()) {
      askPaper(map.colour(finder.most()));
    }
    return paper;
  }

  private void askPaper(int rgb) {
    String hex = PixelColour.hex(rgb);
    notes.ask(
        ArtworkQuestion.Kind.PAPER, Message.of("inlay.artwork-question.paper", hex), hex, Vec.ZERO);
  }

  private void sayColours(PaletteFinder.Found found, int removed) {
    if (found.told() > found.colours().length && settings.colours().isEmpty()) {
      notes.add(
          Kind.COLOURS_MERGED,
          Message.of("inlay.picture-artwork-reader.merged", found.told(), found.colours().length));
    }
    if (removed > 0) {
      notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.picture-artwork-reader.specks", removed));
    }
  }

  /** Area of the smallest spot that stays, in pixels. */
  private double speck(LabelMap map, OptionalInt paper) {
    int none = paper.orElse(LabelMap.OUTSIDE);
    int left = map.width();
    int right = 0;
    for (int i = 0; i < map.label().length; i++) {
      if (map.label()[i] != none) {
        left = Math.min(left, i % map.width());
        right = Math.max(right, i % map.width() + 1);
      }
    }
    double mmPerPixel = options.widthMm() / Math.max(1, right - left);
    double across = settings.speckMm().orElse(SPECK_MM) / mmPerPixel;
    return Math.max(LEAST_PIXELS, Math.PI / 4 * across * across);
  }

  private List<PaintedShape> shapes(
      Pixels pixels, LabelMap map, PictureTrace trace, OptionalInt paper) {
    List<PaintedShape> shapes = new ArrayList<>();
    boolean painted = pixels.seeThrough() < 0;
    if (paper.isPresent() && painted) {
      Path2D all = new Path2D.Double(new Rectangle2D.Double(0, 0, pixels.width(), pixels.height()));
      shapes.add(shape(all, map.colour(paper.getAsInt())));
    }
    List<Path2D> outlines = new RingAssembly(trace).outlines(map.palette().length);
    for (int k = 0; k < outlines.size(); k++) {
      boolean empty = outlines.get(k).getCurrentPoint() == null;
      if (!empty && !paper.equals(OptionalInt.of(k))) {
        shapes.add(shape(outlines.get(k), map.colour(k)));
      }
    }
    if (shapes.isEmpty()) {
      throw RefusedArtworkException.nothingPainted();
    }
    return shapes;
  }

  private static PaintedShape shape(Path2D outline, int rgb) {
    return new PaintedShape(
        outline, PixelColour.hex(rgb), 1, List.of(), List.of(), PaintedShape.As.FILL);
  }
}
