package slabwright.desk.model.scene;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.desk.model.Wish;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.input.Viewport;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.PlacedInlay;
import slabwright.picture.FloorRendering;
import slabwright.picture.FloorScene;
import slabwright.shape.Affine;
import slabwright.units.Message;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;

/**
 * The floor area looked at as it should look when finished, for a window onto it. Painted off the
 * asking thread; what a newer question replaces is given up.
 */
public final class ExpectedLook implements AutoCloseable {
  /**
   * A window of the screen.
   *
   * @param grain pixels of the screen to one of the window, along an edge: 2 on a fine screen
   * @param backdrop colour around the floor, {@code #rrggbb}
   */
  public record Window(Viewport viewport, int width, int height, double grain, String backdrop) {
    /** Across the picture, pixels of the screen. */
    public int pixelsAcross() {
      return (int) Math.ceil(width * grain);
    }

    /** Down the picture, pixels of the screen. */
    public int pixelsDown() {
      return (int) Math.ceil(height * grain);
    }
  }

  /** A picture for a window. */
  public static final class Painted {
    private final Window window;
    private final int[] argb;
    private final List<String> uncoloured;

    private Painted(Window window, int[] argb, List<String> uncoloured) {
      this.window = window;
      this.argb = argb;
      this.uncoloured = List.copyOf(uncoloured);
    }

    public Window window() {
      return window;
    }

    /** Its pixels, row by row; not to be written to. */
    public int[] argb() {
      return argb;
    }

    /** Labels of dyes whose colour the shop book does not say. */
    public List<String> uncoloured() {
      return uncoloured;
    }
  }

  private record Floor(FloorTakeoff takeoff, List<PlacedInlay> inlays, ShopBookText book) {}

  private record Question(Floor floor, Window window) {}

  /** The scene of the last floor; the worker alone uses it. */
  private static final class Scenes {
    private Optional<Floor> of = Optional.empty();
    private Optional<FloorScene> scene = Optional.empty();

    FloorScene of(Floor floor) {
      if (scene.isEmpty() || !of.equals(Optional.of(floor))) {
        of = Optional.of(floor);
        scene =
            Optional.of(FloorScene.of(floor.takeoff(), floor.inlays(), ShopBook.of(floor.book())));
      }
      return scene.get();
    }
  }

  private final SelectedAreaResults answers;
  private final Supplier<Optional<ShopBookText>> book;
  private final Computed<Question, Painted> painted;
  private Optional<Window> window = Optional.empty();
  private boolean on;

  /**
   * A look that is off.
   *
   * @param book the shop book as it is
   * @param home the asking thread, as an executor
   */
  public ExpectedLook(
      Desk desk,
      SelectedAreaResults answers,
      Supplier<Optional<ShopBookText>> book,
      Executor home) {
    this.answers = answers;
    this.book = book;
    Scenes scenes = new Scenes();
    painted =
        new Computed<Question, Painted>(
                Computed.Pace.hurried("expected-look"),
                home,
                q -> paint(scenes.of(q.floor()), q.window()),
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.picture", why)))
            .follow(this::wish, answers.changed());
  }

  /** What was painted of a floor that is not shown any more goes at once. */
  private Wish<Question> wish() {
    if (!on || answers.takeoff().isEmpty()) {
      return Wish.nothing();
    }
    return floor().flatMap(f -> window.map(w -> Wish.of(new Question(f, w)))).orElse(Wish.asItIs());
  }

  /** Given when it was switched, and when there is another picture or should be. */
  public Signal changed() {
    return painted.changed();
  }

  public boolean isOn() {
    return on;
  }

  /** Shows the floor so, or as a drawing again. */
  public void set(boolean next) {
    if (on != next) {
      on = next;
      painted.look();
      changed().fire();
    }
  }

  /** Asks for a window; nothing while it is off or nothing is known. */
  public void ask(Window wanted) {
    window = Optional.of(wanted).filter(w -> w.width() > 0 && w.height() > 0);
    painted.look();
  }

  private Optional<Floor> floor() {
    List<PlacedInlay> inlays =
        answers.inlays().stream().map(ComputedInlay::placed).flatMap(Optional::stream).toList();
    return answers.takeoff().flatMap(t -> book.get().map(b -> new Floor(t, inlays, b)));
  }

  /** The last picture, maybe of another window than the one asked for. */
  public Optional<Painted> painted() {
    return painted.value();
  }

  public boolean isWorking() {
    return painted.isBusy();
  }

  private static Painted paint(FloorScene scene, Window w) {
    Thread me = Thread.currentThread();
    Viewport v = w.viewport();
    double k = w.grain();
    Affine toPixels =
        new Affine(k * v.scale(), 0, 0, -k * v.scale(), k * v.originX(), k * v.originY());
    FloorRendering picture =
        FloorRendering.plan(scene, toPixels, w.pixelsAcross(), w.pixelsDown(), w.backdrop());
    return new Painted(w, picture.argb(me::isInterrupted), scene.uncoloured());
  }

  @Override
  public void close() {
    painted.close();
  }
}
