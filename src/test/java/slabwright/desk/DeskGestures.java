package slabwright.desk;

import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.canvas.SlabView;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Site;

/** What a person does at the desk: real keys and a real pointer. */
final class DeskGestures {
  private final DeskUnderTest desk;
  private final FxRobot robot = new FxRobot();

  DeskGestures(DeskUnderTest desk) {
    this.desk = desk;
  }

  DeskGestures press(KeyCode... keys) throws TimeoutException {
    robot.push(keys);
    desk.settle();
    return this;
  }

  DeskGestures click(String id) throws TimeoutException {
    click(middle(desk.node(id)));
    desk.settle();
    return this;
  }

  /** Types a line into whatever has the cursor, then Enter. */
  DeskGestures line(String text) throws TimeoutException {
    robot.write(text, 0);
    robot.push(KeyCode.ENTER);
    desk.settle();
    return this;
  }

  /** Types over a field of a card. */
  DeskGestures fill(String id, String text) throws TimeoutException {
    Node field = desk.node(id);
    click(middle(field));
    robot.push(KeyCode.SHORTCUT, KeyCode.A);
    robot.write(text, 0);
    robot.push(KeyCode.ENTER);
    desk.settle();
    return this;
  }

  DeskGestures clickSlab(double x, double y) throws TimeoutException {
    click(screen(x, y));
    desk.settle();
    return this;
  }

  DeskGestures hover(double x, double y) throws TimeoutException {
    move(screen(x, y));
    desk.settle();
    return this;
  }

  DeskGestures drag(Vec from, Vec to) throws TimeoutException {
    move(screen(from.x(), from.y()));
    robot.press(MouseButton.PRIMARY);
    Vec mid = from.towards(to, 0.5);
    move(screen(mid.x(), mid.y()));
    move(screen(to.x(), to.y()));
    robot.release(MouseButton.PRIMARY);
    desk.settle();
    return this;
  }

  /** Moves the pointer at once, without gliding there. */
  private void move(Point2D to) {
    robot.robotContext().getBaseRobot().moveMouse(to);
    WaitForAsyncUtils.waitForFxEvents(1);
  }

  private void click(Point2D at) {
    move(at);
    robot.press(MouseButton.PRIMARY).release(MouseButton.PRIMARY);
  }

  private static Point2D middle(Node node) {
    return DeskUnderTest.on(
        () -> {
          Bounds b = node.localToScreen(node.getLayoutBounds());
          return new Point2D(b.getCenterX(), b.getCenterY());
        });
  }

  /** A place on the site, mm, as a point on the screen. */
  Point2D screen(double x, double y) {
    return DeskUnderTest.on(
        () -> {
          Vec at = slab().viewport().toScreen(new Vec(x, y));
          return slab().localToScreen(at.x(), at.y());
        });
  }

  SlabView slab() {
    return desk.room().workroom().slab();
  }

  DeskGestures stage(Stage stage) throws TimeoutException {
    return click("stage-" + stage.word());
  }

  Site site() {
    return DeskUnderTest.on(() -> desk.room().bench().desk().site());
  }

  FloorArea area() {
    return site().areas().get(site().areas().size() - 1);
  }

  /** The corners of the last floor area, whole mm. */
  List<Vec> corners() {
    return area().outline().stream()
        .map(p -> p.from().vec())
        .map(v -> new Vec(Math.rint(v.x()) + 0.0, Math.rint(v.y()) + 0.0))
        .toList();
  }
}
