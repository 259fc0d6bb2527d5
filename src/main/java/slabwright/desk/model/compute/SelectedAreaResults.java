package slabwright.desk.model.compute;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.floor.FloorFigures;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.QuickTakeoff;
import slabwright.inlay.ComputedInlay;
import slabwright.project.AreaCache;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/**
 * What is computed of the floor area looked at: its take-off while something is dragged, its inlays
 * once it rests. Worked out off the asking thread; what a newer plan replaces is given up.
 */
public final class SelectedAreaResults implements AutoCloseable {
  private record Question(FloorTakeoff takeoff, UnitSystem units, Path folder, AreaCache areas) {}

  private final Desk desk;
  private final Selection focus;
  private final Supplier<Optional<Path>> plan;
  private final AreaCache areas;
  private final Signal changed = new Signal();
  private final Takeoffs takeoffs;
  private final Computed<Question, List<ComputedInlay>> inlayWork;
  private Optional<FloorArea> asked = Optional.empty();
  private UnitSystem askedIn = UnitSystem.METRIC;
  private Optional<FloorTakeoff> takeoff = Optional.empty();
  private Optional<QuickTakeoff> glance = Optional.empty();
  private Optional<Takeoffs.Followed> followed = Optional.empty();
  private List<ComputedInlay> inlays = List.of();
  private int opening;
  private long round;

  /**
   * Listens to the desk and the focus.
   *
   * @param plan the file that graphics are relative to
   * @param areas shared with what is computed of the whole site
   * @param home the asking thread, as an executor
   */
  public SelectedAreaResults(
      Desk desk, Selection focus, Supplier<Optional<Path>> plan, AreaCache areas, Executor home) {
    this.desk = desk;
    this.focus = focus;
    this.plan = plan;
    this.areas = areas;
    takeoffs =
        new Takeoffs(
            areas,
            home,
            new Takeoffs.Listeners(
                this::take,
                this::take,
                this::take,
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.take-off", why))));
    inlayWork =
        new Computed<>(
            Computed.Pace.hurried("inlays"),
            home,
            SelectedAreaResults::place,
            this::take,
            UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.inlay", why)));
    desk.changed().subscribe(this::look);
    focus.changed().subscribe(this::look);
  }

  public Signal changed() {
    return changed;
  }

  /** The last take-off; while dragging, of the floor as it was when the hand last rested. */
  public Optional<FloorTakeoff> takeoff() {
    return takeoff;
  }

  /** What keeps up with a drag: of what is shown, or of what was shown a moment ago. */
  public Optional<QuickTakeoff> glance() {
    return glance;
  }

  /**
   * The exact figures of what is dragged, or of how it lay a moment ago, as far as they are known.
   */
  public Optional<FloorFigures> followed() {
    return followed.flatMap(Takeoffs.Followed::figures);
  }

  /** The floor that the exact figures of a drag are of. */
  public Optional<FloorArea> followedArea() {
    return followed.filter(f -> f.figures().isPresent()).map(Takeoffs.Followed::area);
  }

  /** The inlays as they were when the plan last rested. */
  public List<ComputedInlay> inlays() {
    return inlays;
  }

  /** Grows whenever inlays have been worked out anew. */
  public long version() {
    return round;
  }

  public Optional<ComputedInlay> inlay(String id) {
    return inlays.stream().filter(i -> i.inlay().id().equals(id)).findFirst();
  }

  /** Whether inlays are being worked on. */
  public boolean isWorking() {
    return inlayWork.isBusy();
  }

  /** Whether there are exact figures of the floor as it is dragged just now. */
  public boolean isFollowedTrue() {
    return followedArea().isPresent() && followedArea().equals(focus.area());
  }

  /** Whether the glance is of the floor as it is shown. */
  public boolean isGlanceTrue() {
    return glance.map(QuickTakeoff::area).equals(focus.area());
  }

  /** Whether the take-off is of what is shown. */
  public boolean isTakenOff() {
    return !takeoffs.isBusy();
  }

  public boolean isUpToDate() {
    return !takeoffs.isBusy() && !inlayWork.isBusy();
  }

  /** Gives up the inlays that are being worked on; they are asked for again after the next edit. */
  public void cancel() {
    inlayWork.cancel();
    changed.fire();
  }

  /** Gives up the take-off; figures stay dimmed until the floor is asked for again. */
  public void cancelTakeoff() {
    takeoffs.cancel();
    asked = Optional.empty();
    changed.fire();
  }

  /** Works everything out again, as after a graphic changed on disk. */
  public void recompute() {
    areas.forgetGraphics();
    asked = Optional.empty();
    look();
  }

  /** Nothing of another plan or another floor area is shown for this one. */
  private void forget(Optional<FloorArea> now) {
    boolean other = !asked.map(FloorArea::id).equals(now.map(FloorArea::id));
    if (opening != desk.opening() || (other && asked.isPresent())) {
      opening = desk.opening();
      takeoffs.cancel();
      inlayWork.cancel();
      takeoff = Optional.empty();
      glance = Optional.empty();
      followed = Optional.empty();
      inlays = List.of();
      asked = Optional.empty();
    }
  }

  private void look() {
    Optional<FloorArea> now = focus.area();
    forget(now);
    if (now.isEmpty()) {
      takeoffs.cancel();
      inlayWork.cancel();
      takeoff = Optional.empty();
      glance = Optional.empty();
      followed = Optional.empty();
      inlays = List.of();
      asked = now;
      changed.fire();
    } else if (!asked.equals(now) || askedIn != desk.site().units()) {
      asked = now;
      askedIn = desk.site().units();
      if (desk.isPreviewing()) {
        inlayWork.cancel();
      }
      takeoffs.ask(now.get(), desk.isPreviewing());
    }
  }

  private void take(QuickTakeoff g) {
    glance = Optional.of(g);
    changed.fire();
  }

  private void take(Takeoffs.Followed f) {
    followed = Optional.of(f);
    changed.fire();
  }

  private void take(FloorTakeoff t) {
    followed = Optional.empty();
    takeoff = Optional.of(t);
    glance = Optional.of(QuickTakeoff.of(t));
    askForInlays(t);
    changed.fire();
  }

  private void askForInlays(FloorTakeoff t) {
    boolean rests = focus.areaOf(desk.site()).equals(Optional.of(t.area()));
    Optional<Path> folder = plan.get().map(p -> p.toAbsolutePath().getParent());
    if (rests && folder.isPresent() && !t.area().inlays().isEmpty()) {
      inlayWork.ask(new Question(t, desk.site().units(), folder.get(), areas));
    } else if (t.area().inlays().isEmpty()) {
      inlayWork.cancel();
      inlays = List.of();
    }
  }

  private void take(List<ComputedInlay> all) {
    inlays = all;
    round++;
    changed.fire();
  }

  private static List<ComputedInlay> place(Question q) {
    List<ComputedInlay> all = new ArrayList<>();
    for (Inlay i : q.takeoff().area().inlays()) {
      try {
        all.add(ComputedInlay.of(i, q.areas().place(i, q.folder(), q.takeoff(), q.units())));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return all;
  }

  @Override
  public void close() {
    takeoffs.close();
    inlayWork.close();
  }
}
