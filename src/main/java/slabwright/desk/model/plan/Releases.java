package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.desk.model.Wish;
import slabwright.project.plan.FrozenRelease;
import slabwright.project.plan.ReleaseFiles;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.site.edit.Edit;
import slabwright.units.Message;

/**
 * Issues releases: the plan and its graphics frozen under a number that every sheet and cut file
 * carries until something changes. Tells what changed since a release, also of one issued long ago.
 * Files are read off the asking thread; nothing is told of a plan before its own were read.
 */
public final class Releases implements AutoCloseable {
  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final BackgroundTasks errands;
  private final Signal graphicsChanged = new Signal();
  private final Computed<ReleaseReading.Question, ReleaseReading> reading;
  private Optional<Integer> compared = Optional.empty();
  private long graphics;
  private int looks;

  /**
   * Follows the desk.
   *
   * @param home the asking thread, as an executor
   */
  public Releases(
      Desk desk, Supplier<Optional<Path>> plan, BackgroundTasks errands, Executor home) {
    this.desk = desk;
    this.plan = plan;
    this.errands = errands;
    ReleaseReading.Reader reader = new ReleaseReading.Reader();
    reading =
        new Computed<ReleaseReading.Question, ReleaseReading>(
                Computed.Pace.patient("releases"),
                home,
                reader::read,
                this::arrived,
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.releases", why)))
            .follow(this::wish, desk.changed());
  }

  private Wish<ReleaseReading.Question> wish() {
    return Wish.of(
            plan.get()
                .filter(p -> desk.isOpen())
                .map(p -> new ReleaseReading.Question(p, desk.site(), compared, looks)))
        .in(desk.opening());
  }

  private void arrived(ReleaseReading now) {
    if (now.graphicsSeen() > graphics) {
      graphics = now.graphicsSeen();
      graphicsChanged.fire();
    }
  }

  /** Given when more is known of releases and graphics on disk. */
  public Signal changed() {
    return reading.changed();
  }

  /** Given when graphics on disk are no longer what they were; what was worked out of them is. */
  public Signal graphicsChanged() {
    return graphicsChanged;
  }

  public boolean isWorking() {
    return reading.isBusy();
  }

  /** Graphics may have changed on disk, as after another program had the screen. */
  public void recheckGraphics() {
    looks++;
    reading.look();
  }

  /** Issues the next release as one step, every graphic accepted as it is now. */
  public void issue(String note) {
    Site site = desk.site();
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    plan.get()
        .ifPresent(
            file ->
                errands.run(
                    new BackgroundTasks.BackgroundTask<>(
                        Message.of("desk.model.releases.freezing"),
                        why -> Message.of("desk.model.releases.nothing-issued", why),
                        steps -> ReleaseFiles.freeze(file, site, note, today),
                        this::push)));
  }

  private void push(FrozenRelease issued) {
    if (!desk.site().equals(issued.before())) {
      desk.refuse(Message.of("desk.model.releases.changed-meanwhile"));
    } else if (desk.push(issued.edit()).isOk()) {
      desk.announce(Message.of("desk.model.releases.issued", issued.number()));
    }
  }

  /** Whether graphics and releases of the open plan have been looked at. */
  public boolean isKnown() {
    return reading.value().isPresent();
  }

  /**
   * Whether the inlay's graphic on disk is no longer what was accepted, as when it was last looked
   * at.
   */
  public boolean changedOnDisk(Inlay i) {
    return reading.value().filter(r -> r.isChanged(i)).isPresent();
  }

  /** Whether the plan is what its last release froze, as when it was last looked at. */
  public boolean isAsIssued() {
    return reading.value().filter(ReleaseReading::isAsIssued).isPresent();
  }

  /** Accepts the inlay's graphic as it is on disk now. */
  public void accept(FloorArea area, Inlay i) {
    plan.get()
        .ifPresent(
            file ->
                errands.run(
                    new BackgroundTasks.BackgroundTask<>(
                        Message.of("desk.model.releases.accepting"),
                        why -> Message.of("project.plan.graphic-unreadable", why),
                        steps -> new ReleaseFiles(file).accept(area, i),
                        edit -> push(edit, area, i))));
  }

  private void push(Edit edit, FloorArea area, Inlay i) {
    boolean same =
        desk.site().areas().stream()
            .filter(a -> a.id().equals(area.id()))
            .anyMatch(a -> a.inlays().contains(i));
    if (same) {
      desk.push(edit);
    } else {
      desk.refuse(Message.of("desk.model.releases.inlay-changed-meanwhile"));
    }
  }

  /** Numbers of the releases issued, latest first. */
  public List<Integer> numbers() {
    List<Integer> all = new ArrayList<>();
    desk.site().releases().forEach(r -> all.add(0, r.number()));
    return all;
  }

  /** Asks what changed since a release. */
  public void compare(int number) {
    compared = Optional.of(number);
    reading.look();
  }

  /** What changed since a release; empty until that is known of the plan as it is. */
  public Optional<ReleaseReading.Since> since(int number) {
    return reading.current().flatMap(r -> r.since(number));
  }

  @Override
  public void close() {
    reading.close();
  }
}
