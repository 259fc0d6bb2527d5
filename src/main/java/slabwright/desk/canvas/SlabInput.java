package slabwright.desk.canvas;

import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import slabwright.desk.model.input.Snap;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.Pictures;
import slabwright.desk.tool.ActiveTool;
import slabwright.desk.tool.Tool;
import slabwright.desk.tool.Touch;
import slabwright.shape.Vec;

/** Turns the pointer and its buttons into touches of the tool in hand, and into zoom and pan. */
public final class SlabInput {
  private final SlabView view;
  private final ActiveTool tools;
  private final Pictures pictures;
  private final DimensionField field;
  private final Runnable acted;
  private final LongPress rest;
  private Optional<FloorPicture> snapFor = Optional.empty();
  private Snapper snapper = Snapper.NONE;
  private boolean space;
  private boolean panning;
  private double lastX;
  private double lastY;

  /**
   * For the view; it hears nothing yet.
   *
   * @param acted told after every touch, so that prompts and cards follow
   * @param menu asked for at a place, told where that is on the screen
   */
  public SlabInput(
      SlabView view,
      ActiveTool tools,
      Pictures pictures,
      DimensionField field,
      Runnable acted,
      Menu menu) {
    rest = new LongPress((x, y, sx, sy) -> ask(menu, x, y, sx, sy));
    this.view = view;
    this.tools = tools;
    this.pictures = pictures;
    this.field = field;
    this.acted = acted;
  }

  /** What can be done at a place. */
  public interface Menu {
    /** For the place under the pointer, site frame, within reach of a hand's tremble, mm. */
    void open(Vec at, double reach, double screenX, double screenY);
  }

  /** What was held is let go as it was; the menu speaks of what lies there. */
  private void ask(Menu menu, double x, double y, double screenX, double screenY) {
    if (!tools.tool().crosshair()) {
      tools.tool().letGo();
    }
    menu.open(view.viewport().toSite(x, y), view.reach(), screenX, screenY);
    after();
  }

  /** Begins to listen. */
  public void listen() {
    view.setOnMousePressed(this::pressed);
    view.setOnMouseDragged(this::dragged);
    view.setOnMouseReleased(this::released);
    view.setOnMouseMoved(this::moved);
    view.setOnMouseExited(e -> view.showSnap(Optional.empty()));
    view.setOnScroll(this::scrolled);
    view.setOnZoom(
        e -> view.setViewport(view.viewport().zoomed(e.getZoomFactor(), e.getX(), e.getY())));
    view.addEventHandler(KeyEvent.ANY, this::spaceHeld);
  }

  private void spaceHeld(KeyEvent e) {
    if (e.getCode() == KeyCode.SPACE) {
      space = e.getEventType() != KeyEvent.KEY_RELEASED;
      view.setCursor(space ? Cursor.OPEN_HAND : Cursor.DEFAULT);
      e.consume();
    }
  }

  private void pressed(MouseEvent e) {
    view.requestFocus();
    lastX = e.getX();
    lastY = e.getY();
    panning = e.getButton() != MouseButton.PRIMARY || space;
    boolean thumb = e.isSynthesized() || view.isRoomy();
    rest.pressed(e, thumb && !panning && !tools.tool().crosshair());
    if (panning) {
      return;
    }
    Optional<LiveDimensions.Target> dimension =
        tools.tool().crosshair() ? Optional.empty() : view.dimensions().at(e.getX(), e.getY());
    if (dimension.isPresent()) {
      field.open(dimension.get(), view.viewport().toSite(e.getX(), e.getY()));
      return;
    }
    field.close();
    tools.tool().press(touch(e));
    after();
  }

  private void dragged(MouseEvent e) {
    rest.dragged(e);
    if (panning) {
      view.setViewport(view.viewport().panned(e.getX() - lastX, e.getY() - lastY));
      lastX = e.getX();
      lastY = e.getY();
      return;
    }
    tools.tool().drag(touch(e));
    after();
  }

  private void released(MouseEvent e) {
    rest.released(e);
    if (!panning) {
      tools.tool().release(touch(e));
      after();
    }
    panning = false;
  }

  private void moved(MouseEvent e) {
    Touch t = touch(e);
    tools.tool().hover(t);
    boolean onDimension =
        !tools.tool().crosshair() && view.dimensions().at(e.getX(), e.getY()).isPresent();
    view.setCursor(
        space
            ? Cursor.OPEN_HAND
            : onDimension
                ? Cursor.TEXT
                : tools.tool().crosshair() ? Cursor.CROSSHAIR : Cursor.DEFAULT);
    view.showSnap(tools.tool().crosshair() ? Optional.of(t.snap()) : Optional.empty());
  }

  private void scrolled(ScrollEvent e) {
    if (e.isShiftDown()) {
      view.setViewport(view.viewport().panned(e.getDeltaX() + e.getDeltaY(), 0));
    } else if (e.getDeltaY() != 0) {
      double factor = Math.pow(1.0018, e.getDeltaY());
      view.setViewport(view.viewport().zoomed(factor, e.getX(), e.getY()));
    }
    e.consume();
  }

  private Touch touch(MouseEvent e) {
    Vec raw = view.viewport().toSite(e.getX(), e.getY());
    Tool tool = tools.tool();
    Snap snap =
        e.isAltDown() || !tool.snaps()
            ? Snap.free(raw)
            : snapper().withCorners(tool.ownCorners()).snap(raw, tool.from(), view.reach());
    boolean more = e.isShortcutDown();
    return new Touch(raw, snap, view.reach(), e.isShiftDown(), more, e.getClickCount());
  }

  private Snapper snapper() {
    Optional<FloorPicture> now = pictures.picture();
    if (!now.equals(snapFor) || snapper.grid() != view.gridPitch()) {
      snapFor = now;
      snapper =
          now.map(p -> new Snapper(p.corners(), p.edges(), view.gridPitch()))
              .orElseGet(
                  () ->
                      new Snapper(Snapper.NONE.corners(), Snapper.NONE.edges(), view.gridPitch()));
    }
    return snapper;
  }

  private void after() {
    view.repaintOver();
    acted.run();
  }
}
