package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import javafx.application.Platform;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.model.input.Snap;
import slabwright.desk.model.input.Viewport;
import slabwright.desk.model.scene.ExpectedLook;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.PaleFloor;
import slabwright.desk.model.scene.PaleFloors;
import slabwright.desk.model.scene.Pictures;
import slabwright.desk.tool.ActiveTool;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.View;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** The slab in true scale: the plan's inks below, what is being done with it above. */
public final class SlabView extends Region {
  /** How high the line below stands over the plan, px. */
  private static final double PROMPT = 58;

  private final Canvas base = new Canvas();
  private final Canvas over = new Canvas();
  private final DeskContext bench;
  private final Pictures pictures;
  private final ActiveTool tools;
  private final SlabLayers layers;
  private final UnderlayLayer underlay;
  private boolean unread;
  private final ExpectedLookLayer expected;
  private final InkCache marks = new InkCache((g, inks) -> lay(g, inks, tone()));
  private final InkCache hand = new InkCache((g, inks) -> lay(g, inks, tone()));
  private final NameInks names = new NameInks();
  private final LiveDimensions dimensions = new LiveDimensions();
  private Viewport viewport = Viewport.START;
  private Optional<Snap> snap = Optional.empty();
  private Tone tone = Tone.LIGHT;
  private boolean waiting;
  private boolean stale = true;
  private boolean centred;
  private boolean fitted;
  private String fittedArea = "";
  private double covered;
  private DoubleSupplier underfoot = () -> 0;

  private Viewport fittedAs = Viewport.START;

  /**
   * A view of the floor area looked at.
   *
   * @param layers what the stage lays over the plan, site frame
   * @param look shows the floor as it should look instead, when it is on
   */
  public SlabView(
      DeskContext bench,
      Pictures pictures,
      ActiveTool tools,
      SlabLayers layers,
      ExpectedLook look) {
    this.bench = bench;
    this.pictures = pictures;
    this.tools = tools;
    this.layers = layers;
    underlay = new UnderlayLayer(layers::plan, this::traced);
    expected = new ExpectedLookLayer(look);
    look.changed().subscribe(this::repaint);
    setId("slab");
    getStyleClass().add("slab");
    setFocusTraversable(true);
    setAccessibleText(bench.words().say("desk.canvas.slab"));
    getChildren().addAll(base, over);
    over.setMouseTransparent(true);
    base.setMouseTransparent(true);
    pictures.changed().subscribe(this::pictureChanged);
    tools.changed().subscribe(this::repaint);
    focusVisibleProperty().addListener(o -> repaintOver());
    bench.focus().changed().subscribe(this::repaint);
  }

  private void pictureChanged() {
    centre();
    boolean away = pictures.picture().map(this::isNotLookedAt).orElse(false);
    if ((!fitted || away) && pictures.picture().isPresent() && getWidth() > 50) {
      fit();
    }
    repaint();
  }

  /** Whether another area is looked at now, or this one was moved out of view. */
  private boolean isNotLookedAt(FloorPicture p) {
    Bounds b = p.bounds();
    boolean other = !p.area().id().equals(fittedArea) && !bench.focus().keepsView();
    Vec low = viewport.toScreen(new Vec(b.minX(), b.minY()));
    Vec high = viewport.toScreen(new Vec(b.maxX(), b.maxY()));
    return other || high.x() < 0 || low.x() > getWidth() || low.y() < 0 || high.y() > getHeight();
  }

  @Override
  protected void layoutChildren() {
    for (Canvas c : List.of(base, over)) {
      c.setWidth(getWidth());
      c.setHeight(getHeight());
    }
    if (viewport.equals(fittedAs)) {
      fit();
    }
    pictureChanged();
  }

  public Viewport viewport() {
    return viewport;
  }

  public void setViewport(Viewport next) {
    viewport = next;
    repaint();
  }

  public void setTone(Tone next) {
    tone = next;
    repaint();
  }

  /** Forgets where it was; the next picture is fitted. */
  public void resetView() {
    fitted = false;
    centred = false;
    centre();
  }

  /** A first room begins at the site's origin, so that is where we look. */
  private void centre() {
    if (!centred && getWidth() > 50) {
      centred = true;
      setViewport(Viewport.START.centredOn(new Vec(3000, 0), box()));
    }
  }

  /** Shows where a touch is drawn to. */
  public void showSnap(Optional<Snap> where) {
    snap = where;
    repaintOver();
  }

  /** The whole floor area in view, and the picture it is traced from. */
  public void fit() {
    Optional<FloorPicture> p = pictures.picture();
    Bounds traced = underlay.bounds(bench.desk().shown().underlay());
    unread = traced.isEmpty() && bench.desk().shown().underlay().isPresent();
    Bounds all = p.map(FloorPicture::bounds).orElse(Bounds.EMPTY).including(traced);
    if (!all.isEmpty()) {
      centred = true;
      fitted = true;
      fittedArea = p.map(f -> f.area().id()).orElse("");
      setViewport(Viewport.fitting(all, box()));
      fittedAs = viewport;
    }
  }

  /** A picture that was not read yet when the whole was asked for belongs to it. */
  private void traced() {
    if (unread && viewport.equals(fittedAs)) {
      fit();
    }
    repaint();
  }

  /** All floor areas in view. */
  public void fitSite() {
    Bounds all = PaleFloors.bounds(bench.desk().shown());
    if (!all.isEmpty()) {
      fittedArea = pictures.picture().map(p -> p.area().id()).orElse("");
      showAll(all.including(pictures.picture().map(FloorPicture::bounds).orElse(all)));
    }
  }

  /** Looks from farther when some of the bounds would lie out of view. */
  public void keepInView(Bounds b) {
    if (b.isEmpty()) {
      return;
    }
    Bounds box = box();
    Vec low = viewport.toScreen(new Vec(b.minX(), b.minY()));
    Vec high = viewport.toScreen(new Vec(b.maxX(), b.maxY()));
    if (!box.contains(low) || !box.contains(high)) {
      Viewport all = Viewport.fitting(b.grown(600), box);
      setViewport(all.scale() < viewport.scale() ? all : viewport.centredOn(b.middle(), box));
    }
  }

  /** Takes the view to a place, closer when it is far. */
  public void showPlace(Bounds place) {
    Viewport near = Viewport.fitting(place.grown(1500), box());
    setViewport(near.scale() > viewport.scale() ? near : viewport.centredOn(place.middle(), box()));
  }

  /** The whole of the bounds in view, from as near as that allows. */
  public void showAll(Bounds b) {
    centred = true;
    fitted = true;
    setViewport(Viewport.fitting(b, box()));
  }

  /** How much of its right side lies under something, px; the plan is fitted beside that. */
  public void setCovered(double right) {
    if (right != covered) {
      boolean whole = viewport.equals(fittedAs);
      covered = right;
      if (whole) {
        fit();
      }
      repaint();
    }
  }

  /** How high what lies over its foot is, px; the next time the plan is fitted it keeps clear. */
  public void setUnderfoot(DoubleSupplier high) {
    underfoot = high;
  }

  /** What is seen of the site above the line that says what the tool in hand does. */
  private Bounds open() {
    Vec low = viewport.toSite(0, getHeight() - PROMPT);
    return Bounds.of(List.of(low, viewport.toSite(getWidth() - covered, 0)));
  }

  /** The part of the view that nothing lies over. */
  private Bounds box() {
    return new FreeView(getWidth(), getHeight(), covered, underfoot.getAsDouble()).box();
  }

  public double reach() {
    return 9 / viewport.scale();
  }

  /** The middle of a wall's dimension on the screen, when it has room. */
  public Optional<Vec> dimensionMiddle(int wall) {
    return dimensions.targets().stream()
        .filter(t -> t.wall() == wall)
        .map(t -> t.box().middle())
        .findFirst();
  }

  /** Whether it is worked on with thumbs or gloves. */
  boolean isRoomy() {
    return bench.settings().isOn("roomy");
  }

  LiveDimensions dimensions() {
    return dimensions;
  }

  /** Draws all soon, once for any number of changes. */
  public void repaint() {
    stale = true;
    repaintOver();
  }

  /** Draws soon what lies over the plan; the plan itself is left as it is. */
  public void repaintOver() {
    if (!waiting) {
      waiting = true;
      Platform.runLater(this::paint);
    }
  }

  private void paint() {
    waiting = false;
    if (getWidth() < 2 || getHeight() < 2) {
      return;
    }
    if (stale) {
      stale = false;
      paintBase(base.getGraphicsContext2D());
    }
    paintOver(over.getGraphicsContext2D());
  }

  private void paintBase(GraphicsContext g) {
    if (expected.paint(g, viewport, getWidth(), getHeight(), tone)) {
      scaleBar(g, ScreenScaleBar.WIDE_RIM);
      return;
    }
    CanvasBackground.paint(g, viewport, getWidth(), getHeight(), units(), tone == Tone.DARK);
    underlay.paint(g, bench.desk().shown().underlay(), viewport);
    List<PaleFloor> others = pictures.others();
    layOthers(g, others);
    Optional<FloorPicture> picture = pictures.picture();
    picture.ifPresent(p -> layFloor(g, p));
    double paper = FxPainter.SCREEN / viewport.scale();
    lay(g, layers.trueColours(paper), Tone.LIGHT);
    List<Ink> over = new ArrayList<>(layers.overInlays(paper));
    picture.ifPresent(p -> over.addAll(p.walls()));
    over.addAll(layers.overWalls());
    over.addAll(PaleLayer.links(bench.desk().shown(), paper));
    picture.ifPresent(p -> over.addAll(words(p)));
    over.addAll(PaleLayer.names(others, open(), dimensions.taken(viewport).boxes(), paper));
    lay(g, over, tone);
    scaleBar(g, ScreenScaleBar.RIM);
  }

  private void scaleBar(GraphicsContext g, double rim) {
    boolean low = FreeView.isLow(getHeight());
    ScreenScaleBar.paint(g, viewport, getWidth() - covered, rim, low, units(), tone);
  }

  private void layOthers(GraphicsContext g, List<PaleFloor> others) {
    g.save();
    g.setGlobalAlpha(PaleLayer.LINES);
    lay(g, PaleLayer.floors(others), tone);
    g.restore();
  }

  private void layFloor(GraphicsContext g, FloorPicture p) {
    if (bench.desk().shown().underlay().isEmpty()) {
      lay(g, List.of(Fill.of(Palette.WHITE, p.floor())), tone);
    }
    InkCache.CacheKey look = new InkCache.CacheKey(viewport, tone, getWidth(), getHeight());
    boolean dragging = bench.desk().isPreviewing();
    marks.paint(g, p.ground(), look, dragging);
    hand.paint(g, layers.onFloor(), look, dragging);
  }

  private Tone tone() {
    return tone;
  }

  private List<Ink> words(FloorPicture p) {
    List<Ink> inks = new ArrayList<>();
    OverlayScale paper = new OverlayScale(FxPainter.SCREEN / viewport.scale(), units());
    boolean measured = bench.focus().stage() != Stage.SHEETS && !tools.name().drawsRooms();
    List<Ink> lengths = measured ? dimensions.inks(p, viewport, units(), bench.focus()) : List.of();
    inks.addAll(
        names.of(
            new NameInks.Wanted(
                p,
                paper.mm(),
                layers.namesMarks(),
                lengths.size(),
                List.copyOf(bench.focus().selected()),
                tools.tool().handles(paper)),
            () -> measured ? dimensions.taken(viewport) : NameInks.Taken.NOTHING));
    if (measured) {
      inks.addAll(lengths);
      if (layers.namesCorners()) {
        inks.addAll(CornerLetters.of(p, paper.mm()));
      }
    }
    return inks;
  }

  private void paintOver(GraphicsContext g) {
    g.clearRect(0, 0, getWidth(), getHeight());
    OverlayScale paper = new OverlayScale(FxPainter.SCREEN / viewport.scale(), units());
    List<Ink> inks = new ArrayList<>(tools.tool().over(paper));
    snap.ifPresent(s -> inks.addAll(SnapInks.of(s, paper, bench.words())));
    lay(g, inks, tone);
    if (isFocusVisible()) {
      // Tab led here: a rim says so.
      g.setStroke(tone.of(OverlayInks.LIVE));
      g.setLineWidth(2);
      g.strokeRect(1, 1, getWidth() - covered - 2, getHeight() - 2);
    }
  }

  private void lay(GraphicsContext g, List<Ink> inks, Tone with) {
    double k = FxPainter.SCREEN;
    double s = viewport.scale() / k;
    View view = new View(new Affine(s, 0, 0, -s, viewport.originX() / k, viewport.originY() / k));
    Bounds window = new Bounds(-5, -5, getWidth() / k + 5, getHeight() / k + 5);
    Drawing placed = view.place(Drawing.of(CoordinateFrame.SITE, inks));
    placed.paintOn(new FxPainter(g, k, with), window);
  }

  private slabwright.units.UnitSystem units() {
    return bench.desk().shown().units();
  }

  /** The pitch that touches are drawn to at this scale, mm; 0 over a picture that one traces. */
  public double gridPitch() {
    boolean traced = bench.desk().shown().underlay().isPresent();
    return traced ? 0 : GridPitch.pitch(viewport.scale(), 7, units());
  }
}
