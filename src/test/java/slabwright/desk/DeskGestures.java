package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.testfx.api.FxRobot;
import org.testfx.robot.BaseRobot;
import slabwright.desk.canvas.SlabView;
import slabwright.desk.cards.Card;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Site;

/** What a person does at the desk: real keys and a real pointer. */
final class DeskGestures {
  private final DeskUnderTest desk;
  private final FxRobot robot = new FxRobot();
  private boolean hasty;
  private int keys;
  private int clicks;

  DeskGestures(DeskUnderTest desk) {
    this.desk = desk;
  }

  /**
   * Waits no longer than it takes to take a key or a click; places on the slab still wait until all
   * is worked out and shown.
   */
  DeskGestures hasty() {
    hasty = true;
    return this;
  }

  private DeskGestures after() throws TimeoutException {
    if (hasty) {
      desk.laidOut();
    } else {
      desk.settle();
    }
    return this;
  }

  /** Keys pressed together, let go in the other order. */
  DeskGestures press(KeyCode... keys) throws TimeoutException {
    push(keys);
    return after();
  }

  /** Keys pressed so far, each of a chord for itself. */
  int keys() {
    return keys;
  }

  /** Clicks and drags so far. */
  int clicks() {
    return clicks;
  }

  private void push(KeyCode... pressed) {
    keys += pressed.length;
    for (KeyCode key : pressed) {
      base().pressKeyboard(real(key));
    }
    for (int i = pressed.length - 1; i >= 0; i--) {
      base().releaseKeyboard(real(pressed[i]));
    }
    DeskUnderTest.handled();
  }

  private static KeyCode real(KeyCode key) {
    boolean mac = System.getProperty("os.name").startsWith("Mac");
    return key == KeyCode.SHORTCUT ? mac ? KeyCode.COMMAND : KeyCode.CONTROL : key;
  }

  private BaseRobot base() {
    return robot.robotContext().getBaseRobot();
  }

  /** Characters one after the other, as fast as they are taken. */
  private void write(String text) {
    keys += text.length();
    Scene scene = desk.stage().getScene();
    for (int i = 0; i < text.length(); i++) {
      String c = text.substring(i, i + 1);
      KeyCode key = KeyCode.getKeyCode(c.toUpperCase(Locale.ROOT));
      base().typeKeyboard(scene, key == null ? KeyCode.UNDEFINED : key, c);
    }
    DeskUnderTest.handled();
  }

  DeskGestures click(String id) throws TimeoutException {
    click(inView(id));
    return after();
  }

  /** Clicks and does not wait for what follows. */
  DeskGestures clickAndGo(String id) throws TimeoutException {
    click(inView(id));
    DeskUnderTest.handled();
    return this;
  }

  /** Only goes there with the pointer. */
  DeskGestures move(String id) throws TimeoutException {
    move(middle(inView(id)));
    return after();
  }

  /** Types into whatever has the cursor, and leaves it there. */
  DeskGestures type(String text) throws TimeoutException {
    write(text);
    return after();
  }

  /** Types a line into whatever has the cursor, then Enter. */
  DeskGestures line(String text) throws TimeoutException {
    write(text);
    push(KeyCode.ENTER);
    return after();
  }

  /** Clicks a line on the number pad, sign by sign, then its Enter. */
  DeskGestures pad(String line) throws TimeoutException {
    for (int i = 0; i < line.length(); i++) {
      click("pad-" + line.charAt(i));
    }
    return click("pad-Enter");
  }

  /** Types over a field of a card. */
  DeskGestures fill(String id, String text) throws TimeoutException {
    Node field = inView(id);
    click(field);
    if (!DeskUnderTest.on(field::isFocused)) {
      // Figures came in and moved it away under the pointer: one looks again.
      desk.laidOut();
      field = inView(id);
      click(field);
    }
    assertThat(DeskUnderTest.on(desk.node(id)::isFocused)).as("cursor is in " + id).isTrue();
    push(KeyCode.SHORTCUT, KeyCode.A);
    write(text);
    push(KeyCode.ENTER);
    return after();
  }

  static boolean shows(Node node) {
    return node == null || (node.isVisible() && shows(node.getParent()));
  }

  DeskGestures clickSlab(double x, double y) throws TimeoutException {
    desk.settle();
    click(screen(x, y));
    return after();
  }

  /** Presses on a place of the slab and stays there. */
  void hold(double x, double y) {
    move(screen(x, y));
    clicks++;
    base().pressMouse(MouseButton.PRIMARY);
  }

  void letGo() throws TimeoutException {
    base().releaseMouse(MouseButton.PRIMARY);
    after();
  }

  DeskGestures hover(double x, double y) throws TimeoutException {
    move(screen(x, y));
    return after();
  }

  DeskGestures drag(Vec from, Vec to) throws TimeoutException {
    desk.settle();
    move(screen(from.x(), from.y()));
    clicks++;
    base().pressMouse(MouseButton.PRIMARY);
    Vec mid = from.towards(to, 0.5);
    move(screen(mid.x(), mid.y()));
    move(screen(to.x(), to.y()));
    base().releaseMouse(MouseButton.PRIMARY);
    return after();
  }

  /** Takes one of a choice's words from its list. */
  DeskGestures choose(String id, String word) throws TimeoutException {
    click(inView(id));
    desk.laidOut();
    click(middle(Popups.line(desk.stage(), word)));
    return after();
  }

  /** The node, its column scrolled so far that it is seen whole. */
  private Node inView(String id) throws TimeoutException {
    if (DeskUnderTest.on(() -> desk.room().bench().focus().stage()) == Stage.INLAY) {
      // Cards of an inlay grow when it has been worked out; what lies below them then moves.
      desk.settle();
    }
    Node node =
        DeskUnderTest.on(
            () -> {
              desk.stage().getScene().getRoot().applyCss();
              desk.stage().getScene().getRoot().layout();
              return desk.node(id);
            });
    assertThat(node).as("what is named " + id).isNotNull();
    unfold(node);
    assertThat(DeskUnderTest.on(() -> shows(node))).as("shows " + id).isTrue();
    if (DeskUnderTest.on(() -> Scrolling.toSee(node))) {
      desk.laidOut();
    }
    return node;
  }

  /** What lies in a folded card is seen once its heading is clicked. */
  private void unfold(Node node) throws TimeoutException {
    Node card = node;
    while (card != null && !(card instanceof Card)) {
      card = card.getParent();
    }
    Node heading = card == null ? null : card.lookup(".card-title");
    if (heading != null && heading.getAccessibleText().endsWith(", folded") && heading != node) {
      click(heading.getId());
    }
  }

  /** Moves the pointer at once, without gliding there. */
  private void move(Point2D to) {
    base().moveMouse(to);
    DeskUnderTest.handled();
  }

  /** Clicks where a node is once the pointer is there: figures that come in may move it. */
  private void click(Node node) {
    Point2D at = middle(node);
    move(at);
    for (Point2D now = middle(node); now.distance(at) > 1; now = middle(node)) {
      at = now;
      move(at);
    }
    click(at);
  }

  private void click(Point2D at) {
    move(at);
    clicks++;
    base().pressMouse(MouseButton.PRIMARY);
    base().releaseMouse(MouseButton.PRIMARY);
    DeskUnderTest.handled();
  }

  private static Point2D middle(Node node) {
    return DeskUnderTest.on(
        () -> {
          node.getScene().getRoot().applyCss();
          node.getScene().getRoot().layout();
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
    click("stage-" + stage.name());
    if (stage == Stage.FINISH) {
      // Its cards grow when the whole job has been worked out.
      desk.settleAll();
    }
    return this;
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

  /** What is done while a key is held. */
  interface Held {
    void run() throws TimeoutException;
  }

  DeskGestures with(KeyCode key, Held does) throws TimeoutException {
    base().pressKeyboard(key);
    does.run();
    base().releaseKeyboard(key);
    return after();
  }

  /** Drags one node onto another. */
  DeskGestures dragRow(String from, String to) throws TimeoutException {
    Point2D a = middle(inView(from));
    Point2D b = middle(inView(to));
    move(a);
    clicks++;
    base().pressMouse(MouseButton.PRIMARY);
    move(a.midpoint(b));
    move(b.subtract(0, 4));
    base().releaseMouse(MouseButton.PRIMARY);
    DeskUnderTest.handled();
    return after();
  }

  /** Goes on with Tab until a field has the keys. */
  DeskGestures tabTo(String id) throws TimeoutException {
    for (int i = 0; i < 80; i++) {
      push(KeyCode.TAB);
      if (DeskUnderTest.on(() -> desk.node(id).isFocused())) {
        return after();
      }
    }
    throw new AssertionError("Tab does not lead to " + id);
  }

  /** What the line at the foot of the slab always shows. */
  String standing() {
    return DeskUnderTest.on(
        () -> ((Labeled) desk.stage().getScene().lookup(".entry-standing")).getText());
  }
}
