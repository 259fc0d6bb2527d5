package slabwright.desk.model.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskSettings;
import slabwright.project.plan.BackgroundWriter;
import slabwright.project.plan.JournalWriter;
import slabwright.project.plan.OpenedPlan;
import slabwright.project.plan.PlanFiles;
import slabwright.project.plan.PlanLocation;
import slabwright.site.JobDetails;
import slabwright.site.Site;
import slabwright.site.edit.History;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * Opens, saves and journals the open plan, all that is written off the asking thread. A plan that
 * somebody else changed on disk since it was read is not written over: the person is asked. A plan
 * without a file has a folder of its own in the data folder until it is saved.
 */
public final class PlanStorage {
  /** How long a list of plans waits for what is being written, ms. */
  private static final long SLOW = 5_000;

  private final Desk desk;
  private final DeskSettings settings;
  private final PlanFiles files;
  private final BackgroundWriter writer;
  private final JournalWriter journal;

  /**
   * What is known to lie in the open plan's file; the writer's thread sets it too, so that a second
   * saving on the heels of a first knows it. Each opening has its own.
   */
  private AtomicReference<Optional<String>> stamp = none();

  /** The last saving to another file that is not told yet: what is saved meanwhile goes there. */
  private Optional<Asked> underway = Optional.empty();

  /** What the person was asked about and let be, by its stamp. */
  private Optional<String> passedOver = Optional.empty();

  private Runnable askElsewhere = () -> {};
  private Optional<PlanLocation> last = Optional.empty();

  /**
   * Listens to the desk.
   *
   * @param data the user's data folder
   */
  public PlanStorage(Desk desk, DeskSettings settings, Path data, BackgroundWriter writer) {
    this.desk = desk;
    this.settings = settings;
    this.writer = writer;
    files = new PlanFiles(data);
    journal = new JournalWriter(writer, desk::refuse);
    desk.siteChanged().subscribe(this::journal);
  }

  /** How the person is asked for another place to save the plan to. */
  public void onAskElsewhere(Runnable ask) {
    askElsewhere = ask;
  }

  /** Begins a plan that has no file yet, of the contractor whose papers these were last. */
  public void begin(String name, UnitSystem units) {
    JobDetails job = JobDetails.NONE.withContractor(settings.contractor());
    begin(
        Site.empty(name, units).withJob(job),
        files.fresh(LocalDateTime.now(ZoneId.systemDefault())));
  }

  private static AtomicReference<Optional<String>> none() {
    return new AtomicReference<>(Optional.empty());
  }

  private void begin(Site site, PlanLocation at) {
    turnTo(at, none());
    desk.open(site, Optional.empty());
  }

  private void turnTo(PlanLocation at, AtomicReference<Optional<String>> known) {
    last = Optional.of(at);
    stamp = known;
    underway = Optional.empty();
    passedOver = Optional.empty();
    journal.keepOnly(last);
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
  public Result<OpenedPlan> read(Path file) {
    return PlanFiles.open(file, journal);
  }

  /** Opens a plan that was read; what a crash left in its journal comes back as one step. */
  public void open(Path file, OpenedPlan opened) {
    History past = History.of(opened.saved());
    PlanLocation at = PlanLocation.file(file);
    turnTo(at, new AtomicReference<>(opened.stamp()));
    // First, so that what was left in a journal is written there again and nowhere else.
    journal.hold(at, opened.journal(), () -> openElsewhere(file));
    desk.open(
        opened
            .recovered()
            .map(s -> past.push(Message.of("desk.model.plan-storage.recovered-work"), s))
            .orElse(past),
        Optional.of(file));
    settings.addRecent(file);
  }

  private void openElsewhere(Path file) {
    if (desk.file().equals(Optional.of(file))) {
      desk.announce(Message.of("desk.model.plan-storage.open-elsewhere", name(file)));
    }
  }

  /** Goes on with an untitled plan that was never saved, as it was left. */
  public void recover(Path folder, Site left) {
    begin(left, PlanLocation.untitled(folder));
  }

  /** Goes on with the plan that another, closed one had open, and with its past. */
  public void goOn(PlanStorage before) {
    if (before.desk.isOpen()) {
      before.location().ifPresent(at -> goOn(before, at));
    }
  }

  private void goOn(PlanStorage before, PlanLocation at) {
    turnTo(at, before.stamp);
    journal.hold(at, before.journal.number(at), () -> {});
    desk.open(before.desk.history(), before.desk.file());
  }

  /**
   * Plans that were not saved when the program last ended: some of those given, and such as were
   * never saved. It reads files, so not on the asking thread, and waits for what is being written.
   */
  List<PlanFiles.LeftPlan> recoverable(List<Path> recent) {
    writer.awaitAll(SLOW);
    return files.recoverable(recent, journal);
  }

  /** Lets other windows have the plan; asked before the writer is closed. */
  public void close() {
    journal.keepOnly(Optional.empty());
  }

  /** Saves to the plan's file soon; false when it has none yet. */
  public boolean save() {
    Optional<Path> file = underway.map(Asked::file).or(desk::file);
    AtomicReference<Optional<String>> known = stamp;
    if (underway.isEmpty() && file.isPresent() && known.get().isPresent()) {
      Path to = file.get();
      write(to, site -> PlanFiles.saveOver(site, to, known.get().orElseThrow()));
    } else {
      file.ifPresent(this::saveAs);
    }
    return file.isPresent();
  }

  /** Saves to a file soon, with what lies beside the plan where it lay elsewhere before. */
  public void saveAs(Path file) {
    Optional<PlanLocation> before = location();
    write(
        file,
        site -> {
          PlanFiles.save(site, before, file);
          return PlanFiles.Saving.SAVED;
        });
  }

  /** Writes a state to a file. */
  @FunctionalInterface
  private interface SavingWork {
    PlanFiles.Saving of(Site site) throws IOException;
  }

  /** What is open when it is asked to be saved; edits go on meanwhile. */
  private record Asked(
      Path file,
      Site site,
      int position,
      int opening,
      PlanLocation before,
      AtomicReference<Optional<String>> known) {}

  private void write(Path file, SavingWork work) {
    boolean there = underway.isEmpty() && desk.file().filter(file::equals).isPresent();
    Asked asked =
        new Asked(
            file,
            desk.site(),
            desk.history().position(),
            desk.opening(),
            location().orElseGet(() -> PlanLocation.file(file)),
            there ? stamp : none());
    underway = there ? underway : Optional.of(asked);
    writer.write(
        file,
        () -> {
          PlanFiles.Saving saving = work.of(asked.site());
          if (saving == PlanFiles.Saving.SAVED) {
            asked.known().set(Optional.of(PlanFiles.stamp(asked.site())));
          }
          return saving;
        },
        saving -> {
          told(asked);
          saved(asked, saving);
        },
        why -> {
          told(asked);
          desk.ask(
              Message.of("desk.model.plan-storage.not-saved", file.toString(), why),
              List.of(elsewhere()));
        });
  }

  private void told(Asked asked) {
    underway = underway.filter(u -> u.known() != asked.known());
  }

  private void saved(Asked asked, PlanFiles.Saving saving) {
    Path file = asked.file();
    switch (saving) {
      case SAVED -> saved(asked);
      case CHANGED_BY_OTHERS ->
          desk.ask(
              Message.of("desk.model.plan-storage.changed-by-others", name(file)),
              List.of(elsewhere(), theirs(file), mine(file, this::save)));
      case GONE ->
          desk.ask(
              Message.of("desk.model.plan-storage.gone", file.toString()),
              List.of(
                  elsewhere(),
                  new Desk.Choice(
                      Message.of("desk.model.plan-storage.save-there"), () -> saveAs(file))));
    }
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  private Desk.Choice elsewhere() {
    return new Desk.Choice(Message.of("desk.model.plan-storage.elsewhere"), askElsewhere);
  }

  private void saved(Asked asked) {
    settings.addRecent(asked.file());
    if (asked.opening() != desk.opening()) {
      journal.clear(asked.before());
      return;
    }
    PlanLocation now = PlanLocation.file(asked.file());
    last = Optional.of(now);
    stamp = asked.known();
    desk.savedTo(asked.file(), asked.position(), asked.site());
    boolean edited = !desk.history().isSaved();
    if (edited) {
      journal();
    }
    if (!edited || !now.journalsWith(asked.before())) {
      journal.clear(asked.before());
    }
    if (!now.journalsWith(asked.before())) {
      journal.keepOnly(last);
      journal.hold(now, 1, () -> {});
    }
  }

  /** Looks whether somebody else wrote the plan's file, as after another window had the screen. */
  public void recheck() {
    Optional<Path> file = desk.file().filter(f -> underway.isEmpty());
    if (file.isPresent() && stamp.get().isPresent()) {
      int opening = desk.opening();
      Site site = desk.site();
      AtomicReference<Optional<String>> known = stamp;
      writer.write(
          new Look(file.get()),
          () -> PlanFiles.changedSince(file.get(), known.get().orElseThrow(), site),
          other -> other.ifPresent(o -> changedMeanwhile(file.get(), opening, o)),
          why -> {});
    }
  }

  private record Look(Path file) {}

  private record Other(Path file) {}

  private void changedMeanwhile(Path file, int opening, String other) {
    if (opening == desk.opening() && !passedOver.equals(Optional.of(other))) {
      passedOver = Optional.of(other);
      desk.ask(
          Message.of("desk.model.plan-storage.changed-meanwhile", name(file)),
          List.of(theirs(file), mine(file, () -> {})));
    }
  }

  private Desk.Choice theirs(Path file) {
    return new Desk.Choice(
        Message.of("desk.model.plan-storage.read-theirs"), () -> readTheirs(file));
  }

  /** Keeps what is open here, and what somebody else wrote in a file beside it. */
  private Desk.Choice mine(Path file, Runnable then) {
    int opening = desk.opening();
    AtomicReference<Optional<String>> known = stamp;
    return new Desk.Choice(
        Message.of("desk.model.plan-storage.keep-mine"),
        () ->
            writer.write(
                new Other(file),
                () -> {
                  PlanFiles.Aside aside = PlanFiles.putAside(file);
                  known.set(Optional.of(aside.stamp()));
                  return aside.copy();
                },
                copy -> {
                  if (opening == desk.opening()) {
                    desk.announce(
                        Message.of("desk.model.plan-storage.theirs-aside", name(copy), name(file)));
                    then.run();
                  }
                },
                why -> desk.refuse(notRead(file, why))));
  }

  private static Message notRead(Path file, String why) {
    return Message.of("desk.model.plan-storage.theirs-not-read", name(file), why);
  }

  /** Takes what somebody else wrote; what was open stays one undo away. */
  private void readTheirs(Path file) {
    int opening = desk.opening();
    writer.write(
        new Other(file),
        () -> PlanFiles.open(file, journal),
        read -> {
          if (read instanceof Result.Refused<OpenedPlan> bad) {
            desk.refuse(bad.refusals().get(0));
          } else if (opening == desk.opening()) {
            takeTheirs(file, read.orThrow());
          }
        },
        why -> desk.refuse(notRead(file, why)));
  }

  private void takeTheirs(Path file, OpenedPlan theirs) {
    History both =
        History.of(desk.site())
            .push(Message.of("desk.model.plan-storage.their-plan"), theirs.saved())
            .markSaved();
    stamp = new AtomicReference<>(theirs.stamp());
    passedOver = Optional.empty();
    desk.open(both, Optional.of(file));
  }

  private void journal() {
    if (!desk.isOpen()) {
      journal.keepOnly(Optional.empty());
    }
    boolean untouched = desk.history().position() == 0 && desk.file().isPresent();
    if (desk.isOpen() && !untouched) {
      location().ifPresent(at -> journal.write(at, desk.site()));
    }
  }
}
