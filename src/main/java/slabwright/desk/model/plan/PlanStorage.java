package slabwright.desk.model.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskSettings;
import slabwright.project.plan.JournalWriter;
import slabwright.project.plan.OpenedPlan;
import slabwright.project.plan.PlanFiles;
import slabwright.project.plan.PlanLocation;
import slabwright.site.Site;
import slabwright.site.edit.History;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * Opens, saves and journals the open plan. After every edit its state is journalled off the asking
 * thread; a plan without a file has a folder of its own in the data folder until it is saved.
 */
public final class PlanStorage implements AutoCloseable {
  private final Desk desk;
  private final DeskSettings settings;
  private final PlanFiles files;
  private final JournalWriter journal;
  private Optional<PlanLocation> last = Optional.empty();

  /**
   * Listens to the desk.
   *
   * @param data the user's data folder
   * @param home the asking thread, as an executor
   */
  public PlanStorage(Desk desk, DeskSettings settings, Path data, Executor home) {
    this.desk = desk;
    this.settings = settings;
    files = new PlanFiles(data);
    journal = new JournalWriter(why -> home.execute(() -> desk.refuse(why)));
    desk.siteChanged().subscribe(this::journal);
  }

  /** Begins a plan that has no file yet. */
  public void begin(String name, UnitSystem units) {
    begin(Site.empty(name, units), files.fresh(LocalDateTime.now(ZoneId.systemDefault())));
  }

  private void begin(Site site, PlanLocation at) {
    last = Optional.of(at);
    desk.open(site, Optional.empty());
  }

  private Optional<PlanLocation> location() {
    return desk.file().map(PlanLocation::file).or(() -> last);
  }

  /** The folder that graphics and pictures of the open plan lie in; made when it is not there. */
  public Path folder() throws IOException {
    Path f = location().orElseThrow(() -> new IOException("no plan is open")).folder();
    Files.createDirectories(f);
    return f;
  }

  /** The path that graphics are relative to: the plan file, or what it would be. */
  public Optional<Path> plan() {
    return location().map(PlanLocation::plan);
  }

  /** Reads a plan file; it may be large or far away, so not on the asking thread. */
  public static Result<OpenedPlan> read(Path file) {
    return PlanFiles.open(file);
  }

  /** Opens a plan that was read; what a crash left in its journal comes back as one step. */
  public void open(Path file, OpenedPlan opened) {
    History past = History.of(opened.saved());
    last = Optional.of(PlanLocation.file(file));
    desk.open(
        opened
            .recovered()
            .map(s -> past.push(Message.of("desk.model.plan-storage.recovered-work"), s))
            .orElse(past),
        Optional.of(file));
    settings.addRecent(file);
  }

  /** Goes on with an untitled plan that was never saved. */
  public void recover(Path what) {
    Result<Site> left = PlanFiles.recover(what);
    if (left instanceof Result.Refused<Site> refused) {
      desk.refuse(refused.refusals().get(0));
    } else {
      begin(left.orThrow(), PlanLocation.untitled(what));
    }
  }

  /** Goes on with the plan that another, closed one had open, and with its past. */
  public void goOn(PlanStorage before) {
    if (before.desk.isOpen()) {
      last = before.last;
      desk.open(before.desk.history(), before.desk.file());
    }
  }

  /** Plans that were not saved when the program last ended. */
  public List<Path> recoverable() {
    return files.recoverable(settings.recent());
  }

  /** Saves to the plan's file; false when it has none yet. */
  public boolean save() {
    desk.file().ifPresent(this::saveAs);
    return desk.file().isPresent();
  }

  /** Saves to a file, with what lies beside the plan where it lay elsewhere before. */
  public void saveAs(Path file) {
    Optional<PlanLocation> before = location();
    try {
      PlanFiles.save(desk.site(), before, file);
    } catch (IOException e) {
      desk.refuse(
          Message.of(
              "desk.model.plan-storage.not-saved",
              file.toString(),
              String.valueOf(e.getMessage())));
      return;
    }
    last = Optional.of(PlanLocation.file(file));
    desk.savedTo(file);
    settings.addRecent(file);
    before.ifPresent(journal::clear);
  }

  private void journal() {
    boolean untouched = desk.history().position() == 0 && desk.file().isPresent();
    if (desk.isOpen() && !untouched) {
      location().ifPresent(at -> journal.write(at, desk.site()));
    }
  }

  /** Waits until everything asked for is on disk; for closing. */
  @Override
  public void close() {
    journal.close();
  }
}
