package slabwright.pdfin.painted;

import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.PDSoftMask;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Runs a page's drawing operators and notes each thing that is painted, in paint order. */
final class PdfPaintCollector extends PdfPathEngine {
  private final PdfPageFrame frame;
  private final PdfNotes notes;
  private final PdfPaints paints;
  private final PdfGlyphs glyphs;
  private final PdfPictures pictures = new PdfPictures();
  private final IdentityHashMap<Path2D, Path2D> clips = new IdentityHashMap<>();
  private final Map<String, PdfSoftMask> masks = new HashMap<>();
  private final PdfLayerStack layers;

  private PdfGroup group = PdfGroup.page();
  private Path2D.Double lettersToClip = new Path2D.Double();

  PdfPaintCollector(PDPage page, OptionalContent layers) {
    super(page);
    this.frame = new PdfPageFrame(page);
    this.notes = new PdfNotes(frame);
    this.layers = new PdfLayerStack(layers, notes);
    this.paints = new PdfPaints(notes, this::tile);
    this.glyphs = new PdfGlyphs(notes);
  }

  List<PdfPaintedShape> shapes() {
    return group.shapes();
  }

  List<PdfNote> notes() {
    return notes.all();
  }

  Map<String, String> names() {
    return paints.names();
  }

  @Override
  public void fillPath(int windingRule) throws IOException {
    fill(path(), windingRule);
    endPath();
  }

  @Override
  public void strokePath() throws IOException {
    stroke(path());
    endPath();
  }

  @Override
  public void fillAndStrokePath(int windingRule) throws IOException {
    fill(path(), windingRule);
    stroke(path());
    endPath();
  }

  private void fill(Path2D outline, int rule) throws IOException {
    if (layers.isHidden() || outline.getCurrentPoint() == null) {
      return;
    }
    PDGraphicsState gs = getGraphicsState();
    Rectangle2D box = outline.getBounds2D();
    Optional<String> hex = paints.hex(gs.getNonStrokingColor(), box);
    if (hex.isPresent()) {
      Path2D.Double made = new Path2D.Double(outline);
      made.setWindingRule(rule);
      double alpha = group.alpha() * gs.getNonStrokeAlphaConstant();
      add(made, frame.toPage(), Optional.empty(), hex.get(), alpha);
    }
  }

  private void stroke(Path2D line) throws IOException {
    if (layers.isHidden() || line.getCurrentPoint() == null) {
      return;
    }
    PDGraphicsState gs = getGraphicsState();
    Rectangle2D box = line.getBounds2D();
    if (!(gs.getLineWidth() > 0)) {
      notes.add(PdfNote.Kind.HAIRLINE, "", box);
      return;
    }
    Optional<String> hex = paints.hex(gs.getStrokingColor(), box);
    AffineTransform user = gs.getCurrentTransformationMatrix().createAffineTransform();
    if (hex.isEmpty() || user.getDeterminant() == 0) {
      return;
    }
    try {
      Path2D.Double followed = new Path2D.Double(line, user.createInverse());
      AffineTransform at = frame.toPage();
      at.concatenate(user);
      Optional<BasicStroke> pen = Optional.of(PdfPens.of(gs));
      add(followed, at, pen, hex.get(), group.alpha() * gs.getAlphaConstant());
    } catch (NoninvertibleTransformException flat) {
      // a pen squeezed to nothing draws nothing
      return;
    }
  }

  private void add(
      Path2D made, AffineTransform at, Optional<BasicStroke> pen, String hex, double alpha)
      throws IOException {
    add(made, at, pen, hex, alpha, Optional.empty());
  }

  private void add(
      Path2D made,
      AffineTransform at,
      Optional<BasicStroke> pen,
      String hex,
      double alpha,
      Optional<PdfPaintedPicture> picture)
      throws IOException {
    budget().shape(getGraphicsState().getCurrentClippingPaths().size());
    PDGraphicsState gs = getGraphicsState();
    if (gs.getBlendMode() != BlendMode.NORMAL && gs.getBlendMode() != BlendMode.COMPATIBLE) {
      notes.add(PdfNote.Kind.BLEND, "", new Rectangle2D.Double());
    }
    List<Path2D> inside = new ArrayList<>();
    for (Path2D clip : gs.getCurrentClippingPaths()) {
      inside.add(clips.computeIfAbsent(clip, c -> new Path2D.Double(c, frame.toPage())));
    }
    group
        .shapes()
        .add(new PdfPaintedShape(made, at, pen, hex, alpha, inside, masksHere(), picture));
  }

  private List<PdfSoftMask> masksHere() throws IOException {
    PDSoftMask mask = getGraphicsState().getSoftMask();
    if (mask == null || mask.getGroup() == null) {
      return group.masks();
    }
    String key =
        System.identityHashCode(mask.getCOSObject()) + "@" + mask.getInitialTransformationMatrix();
    PdfSoftMask known = masks.get(key);
    if (known == null) {
      known = painted(mask);
      masks.put(key, known);
    }
    List<PdfSoftMask> all = new ArrayList<>(group.masks());
    all.add(known);
    return all;
  }

  private PdfSoftMask painted(PDSoftMask mask) throws IOException {
    notes.add(PdfNote.Kind.MASK, "", new Rectangle2D.Double());
    List<PdfPaintedShape> inside = aside(() -> processSoftMask(mask.getGroup()));
    return new PdfSoftMask(inside, COSName.ALPHA.equals(mask.getSubType()));
  }

  /** Something that the library runs. */
  private interface Run {
    void run() throws IOException;
  }

  /** What is painted meanwhile, which is not on the page itself. */
  private List<PdfPaintedShape> aside(Run run) throws IOException {
    PdfGroup onPage = group;
    Path2D.Double openPath = openPath();
    group = PdfGroup.page();
    budget().enter();
    try {
      run.run();
      return group.shapes();
    } finally {
      budget().leave();
      group = onPage;
      goOnWith(openPath);
    }
  }

  private List<PdfPaintedShape> tile(PDTilingPattern pattern, Optional<PDColor> ink)
      throws IOException {
    PDColorSpace space = ink.map(PDColor::getColorSpace).orElse(null);
    return aside(() -> processTilingPattern(pattern, ink.orElse(null), space));
  }

  @Override
  public void showForm(PDFormXObject form) throws IOException {
    COSDictionary layer = form.getCOSObject().getCOSDictionary(COSName.OC);
    enter(layer);
    Path2D.Double openPath = openPath();
    super.showForm(form);
    goOnWith(openPath);
    leave();
  }

  @Override
  public void showTransparencyGroup(PDTransparencyGroup inner) throws IOException {
    COSDictionary layer = inner.getCOSObject().getCOSDictionary(COSName.OC);
    enter(layer);
    PdfGroup outer = group;
    group = outer.inner(getGraphicsState().getNonStrokeAlphaConstant(), masksHere());
    super.showTransparencyGroup(inner);
    group = outer;
    leave();
  }

  private void enter(COSDictionary layer) {
    budget().enter();
    layers.begin(layer);
  }

  private void leave() {
    layers.end();
    budget().leave();
  }

  @Override
  protected void showType3Glyph(Matrix at, PDType3Font font, int code, Vector displacement)
      throws IOException {
    budget().enter();
    if (isVisible(getGraphicsState().getTextState().getRenderingMode())) {
      super.showType3Glyph(at, font, code, displacement);
    }
    budget().leave();
  }

  private static boolean isVisible(RenderingMode mode) {
    return mode.isFill() || mode.isStroke();
  }

  @Override
  protected void showFontGlyph(Matrix at, PDFont font, int code, Vector displacement)
      throws IOException {
    RenderingMode mode = getGraphicsState().getTextState().getRenderingMode();
    if (layers.isHidden() || !(isVisible(mode) || mode.isClip())) {
      return;
    }
    Path2D.Double glyph = glyphs.outline(at, font, code, displacement);
    budget().glyph();
    if (mode.isFill()) {
      fill(glyph, Path2D.WIND_NON_ZERO);
    }
    if (mode.isStroke()) {
      stroke(glyph);
    }
    if (mode.isClip()) {
      lettersToClip.append(glyph, false);
    }
  }

  @Override
  public void beginText() {
    lettersToClip = new Path2D.Double();
  }

  @Override
  public void endText() {
    if (lettersToClip.getCurrentPoint() != null) {
      getGraphicsState().intersectClippingPath(new GeneralPath(lettersToClip));
      lettersToClip = new Path2D.Double();
    }
  }

  @Override
  public void drawImage(PDImage image) throws IOException {
    COSDictionary layer =
        image instanceof PDImageXObject x ? x.getCOSObject().getCOSDictionary(COSName.OC) : null;
    if (layers.isHidden(layer)) {
      return;
    }
    PDGraphicsState gs = getGraphicsState();
    AffineTransform unit = gs.getCurrentTransformationMatrix().createAffineTransform();
    Path2D square = new Path2D.Double(new Rectangle2D.Double(0, 0, 1, 1));
    Rectangle2D box = unit.createTransformedShape(square).getBounds2D();
    Optional<String> hex =
        image.isStencil() ? paints.hex(gs.getNonStrokingColor(), box) : Optional.of("#000000");
    Optional<PdfPaintedPicture> picture = hex.flatMap(h -> pictures.of(image, h));
    if (picture.isPresent()) {
      AffineTransform at = new AffineTransform(frame.toPage());
      at.concatenate(unit);
      double alpha = group.alpha() * gs.getNonStrokeAlphaConstant();
      add(square, at, Optional.empty(), hex.get(), alpha, picture);
    } else if (hex.isPresent()) {
      notes.add(PdfNote.Kind.PICTURE, "", box);
    }
  }

  @Override
  public void shadingFill(COSName name) throws IOException {
    Rectangle2D sheet = frame.sheet();
    Optional<String> hex =
        layers.isHidden() ? Optional.empty() : paints.fade(getResources().getShading(name), sheet);
    if (hex.isPresent()) {
      double alpha = group.alpha() * getGraphicsState().getNonStrokeAlphaConstant();
      add(new Path2D.Double(sheet), frame.toPage(), Optional.empty(), hex.get(), alpha);
    }
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    super.beginMarkedContentSequence(tag, properties);
    layers.begin(COSName.OC.equals(tag) ? properties : null);
  }

  @Override
  public void endMarkedContentSequence() {
    super.endMarkedContentSequence();
    layers.end();
  }
}
