package slabwright.inlay.artwork.pdf;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkBuilder;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkPage;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.ClipOutlines;
import slabwright.inlay.artwork.OutlineBudget;
import slabwright.inlay.artwork.PaintedAreas;
import slabwright.inlay.artwork.PaintedPage;
import slabwright.inlay.artwork.PaintedShape;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.Rgba;
import slabwright.inlay.artwork.SeeThrough;
import slabwright.inlay.artwork.SoftMask;
import slabwright.inlay.artwork.StrokeOutliner;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.inlay.artwork.picture.TracedPicture;
import slabwright.pdfin.painted.PdfNote;
import slabwright.pdfin.painted.PdfPaintedPicture;
import slabwright.pdfin.painted.PdfPaintedShape;
import slabwright.pdfin.painted.PdfPainting;
import slabwright.pdfin.painted.PdfSoftMask;
import slabwright.shape.Vec;
import slabwright.units.Message;
import slabwright.units.Result;

/** Reads a page of a PDF as it is seen, painted and laid to a width. */
public final class PdfArtworkReader {
  private static final double FAINTEST = 0.002;
  private static final double MM_PER_PX = 25.4 / 96;
  private static final String WHITE = "#ffffff";

  private final PdfPainting painting;
  private final OutlineBudget budget = new OutlineBudget();
  private final WarningCollector notes = new WarningCollector();
  private final IdentityHashMap<Path2D, ClipOutlines> clips = new IdentityHashMap<>();
  private final IdentityHashMap<PdfSoftMask, SoftMask> masks = new IdentityHashMap<>();

  private double doubt;
  private boolean leftOut;

  private PdfArtworkReader(PdfPainting painting) {
    this.painting = painting;
  }

  /**
   * Reads a page.
   *
   * @param name what to call the file in sentences
   * @param page from 1
   */
  public static ArtworkResult read(byte[] pdf, String name, int page, ArtworkOptions options) {
    try {
      options.checkWidth();
    } catch (RefusedArtworkException e) {
      return e.refusal(name);
    }
    Result<PdfPainting> result = PdfPainting.read(pdf, page);
    if (result instanceof Result.Refused<PdfPainting> refused) {
      return new ArtworkRefusal(
          ArtworkRefusal.Reason.NOT_UNDERSTOOD,
          Message.of("inlay.artwork.refused", name, refused.message()));
    }
    try {
      return new PdfArtworkReader(result.orThrow()).artwork(name, page, options);
    } catch (RefusedArtworkException e) {
      return e.refusal(name);
    }
  }

  /**
   * What shows of each color on a page, in the frame of its outlines: mm, not turned as the page is
   * shown. Strokes are areas, all is cut by its clips; pictures are left out. No areas where one
   * color or whole fills are all there is.
   *
   * @param name what to call the file in sentences
   * @param page from 1
   * @param tolerance mm, of a curve
   */
  public static Result<PaintedPage> painted(byte[] pdf, String name, int page, double tolerance) {
    return PdfPainting.read(pdf, page)
        .flatMap(
            painting -> {
              try {
                return Result.ok(new PdfArtworkReader(painting).areas(tolerance));
              } catch (RefusedArtworkException e) {
                return Result.refused(e.refusal(name).message());
              }
            });
  }

  private PaintedPage areas(double tolerance) {
    List<PdfPaintedShape> drawn =
        painting.shapes().stream().filter(s -> s.picture().isEmpty()).toList();
    boolean fills =
        drawn.stream()
            .allMatch(s -> s.pen().isEmpty() && s.clips().isEmpty() && s.masks().isEmpty());
    if (fills || drawn.stream().map(PdfPaintedShape::hex).distinct().count() < 2) {
      return PaintedPage.FILLS;
    }
    List<PaintedShape> shapes = new ArrayList<>();
    drawn.forEach(s -> add(s, shapes));
    AffineTransform toMm = AffineTransform.getScaleInstance(MM_PER_PX, MM_PER_PX);
    toMm.concatenate(asWritten());
    return PaintedAreas.of(shapes, toMm, tolerance);
  }

  /** From the page as it is shown to the page before it is turned. */
  private AffineTransform asWritten() {
    double w = painting.width();
    double h = painting.height();
    AffineTransform back = AffineTransform.getQuadrantRotateInstance(-painting.quarters());
    switch (painting.quarters()) {
      case 1 -> back.translate(-w, 0);
      case 2 -> back.translate(-w, -h);
      case 3 -> back.translate(0, -h);
      default -> {
        // stands upright
      }
    }
    return back;
  }

  private ArtworkResult artwork(String name, int page, ArtworkOptions options) {
    List<PaintedShape> shapes = new ArrayList<>();
    painting.shapes().forEach(s -> add(s, shapes));
    painting.notes().forEach(this::note);
    if (painting.pages() > 1) {
      notes.add(
          Kind.PART_LEFT_OUT, Message.of("inlay.pdf-artwork.one-page", page, painting.pages()));
    }
    painting.names().forEach(this::sayName);
    if (shapes.isEmpty() && hasPicture()) {
      throw new RefusedArtworkException(
          ArtworkRefusal.Reason.PICTURE, Message.of("inlay.pdf-artwork.only-a-picture"));
    }
    ArtworkPage sheet = new ArtworkPage(painting.width(), painting.height(), 1, true);
    Artwork artwork =
        new ArtworkBuilder(shapes, sheet, options, notes).named(painting.names()).build(name);
    return doubt > 0 ? artwork.tracedInPart(doubt * artwork.mmPerPx()) : artwork;
  }

  private boolean hasPicture() {
    return leftOut || painting.notes().stream().anyMatch(n -> n.kind() == PdfNote.Kind.PICTURE);
  }

  private void sayName(String hex, String name) {
    notes.add(Kind.SPOT_COLOUR, Message.of("inlay.pdf-artwork.spot-colour", hex, name));
  }

  private void add(PdfPaintedShape s, List<PaintedShape> to) {
    if (s.picture().isPresent()) {
      addPicture(s, s.picture().get(), to);
    } else if (s.alpha() >= FAINTEST) {
      Path2D outline = onPage(s);
      budget.add(outline);
      Rectangle2D box = outline.getBounds2D();
      Vec place = new Vec(box.getCenterX(), box.getCenterY());
      to.add(shape(s, outline, SeeThrough.colour(Rgba.ofHex(s.hex()), s.alpha(), place, notes)));
    }
  }

  /** A picture as the outlines traced of it; its paper stays bare where nothing is below. */
  private void addPicture(PdfPaintedShape s, PdfPaintedPicture picture, List<PaintedShape> to) {
    TracedPicture traced;
    try {
      traced = TracedPicture.of(picture.png());
    } catch (RefusedArtworkException noDrawing) {
      notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.embedded-pictures.left-out"));
      leftOut = true;
      return;
    }
    // rows of a picture run down, its square's y runs up
    AffineTransform onPage = new AffineTransform(s.toPage());
    onPage.concatenate(new AffineTransform(1 / traced.width(), 0, 0, -1 / traced.height(), 0, 1));
    double along = Math.hypot(onPage.getScaleX(), onPage.getShearY());
    double down = Math.hypot(onPage.getShearX(), onPage.getScaleY());
    doubt = Math.max(doubt, traced.doubt() * Math.max(along, down));
    boolean bare = traced.paper().isPresent() && to.isEmpty();
    for (TracedPicture.Area area : traced.areas().subList(bare ? 1 : 0, traced.areas().size())) {
      Path2D outline = new Path2D.Double(area.outline(), onPage);
      budget.add(outline);
      to.add(shape(s, outline, area.hex()));
    }
  }

  private PaintedShape shape(PdfPaintedShape s, Path2D outline, String hex) {
    List<ClipOutlines> inside = s.clips().stream().map(this::clip).toList();
    List<SoftMask> through = s.masks().stream().map(this::mask).toList();
    PaintedShape.As as = s.pen().isPresent() ? PaintedShape.As.STROKE : PaintedShape.As.FILL;
    return new PaintedShape(outline, hex, s.alpha(), inside, through, as);
  }

  private Path2D onPage(PdfPaintedShape s) {
    Path2D drawn =
        s.pen().map(pen -> StrokeOutliner.outline(s.path(), pen, notes)).orElse(s.path());
    return new Path2D.Double(drawn, s.toPage());
  }

  private ClipOutlines clip(Path2D path) {
    return clips.computeIfAbsent(
        path,
        p ->
            new ClipOutlines(
                List.of(new ClipOutlines.Part(p, Optional.empty())), Optional.empty()));
  }

  private SoftMask mask(PdfSoftMask mask) {
    SoftMask known = masks.get(mask);
    if (known == null) {
      List<PaintedShape> painted =
          mask.painted().stream()
              .map(s -> shape(s, onPage(s), mask.byAlpha() ? WHITE : s.hex()))
              .toList();
      Rectangle2D sheet = new Rectangle2D.Double(0, 0, painting.width(), painting.height());
      Path2D all = new Path2D.Double(sheet, new AffineTransform());
      known = new SoftMask(painted, clip(all));
      masks.put(mask, known);
    }
    return known;
  }

  private void note(PdfNote note) {
    switch (note.kind()) {
      case PICTURE -> say(note, Kind.PART_LEFT_OUT, Message.of("inlay.pdf-artwork.picture"));
      case MESH -> say(note, Kind.PART_LEFT_OUT, Message.of("inlay.pdf-artwork.mesh"));
      case HAIRLINE -> say(note, Kind.PART_LEFT_OUT, Message.of("inlay.pdf-artwork.hairline"));
      case HIDDEN_LAYER ->
          notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.pdf-artwork.hidden-layer"));
      case BLEND -> notes.add(Kind.EFFECT_LEFT_OUT, Message.of("inlay.pdf-artwork.blend"));
      case MASK -> notes.add(Kind.MASK, Message.of("inlay.scene-visitor.mask-at-half-brightness"));
      case FONT ->
          say(note, Kind.FONT_SUBSTITUTED, Message.of("inlay.pdf-artwork.font", note.about()));
      case CHARACTER ->
          say(note, Kind.CHARACTER_MISSING, Message.of("inlay.pdf-artwork.glyph", note.about()));
      case FADE -> {
        say(note, Kind.GRADIENT, Message.of("inlay.paint-colour.gradient"));
        Message asked = Message.of("inlay.artwork-question.fade", note.about());
        notes.ask(ArtworkQuestion.Kind.FADE, asked, note.about(), note.place());
      }
      case PATTERN -> {
        say(note, Kind.PATTERN, Message.of("inlay.paint-colour.pattern"));
        Message asked = Message.of("inlay.artwork-question.pattern", note.about());
        notes.ask(ArtworkQuestion.Kind.PATTERN, asked, note.about(), note.place());
      }
    }
  }

  private void say(PdfNote note, Kind kind, Message message) {
    notes.add(kind, message, note.place());
  }
}
