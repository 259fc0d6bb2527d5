package slabwright.desk.model.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskSettings;
import slabwright.desk.model.UnexpectedFault;
import slabwright.project.SiblingFiles;
import slabwright.site.Site;
import slabwright.site.edit.History;
import slabwright.store.Journal;
import slabwright.store.PlanFile;
import slabwright.store.ReleaseArchive;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * Opens, saves and journals the plan. After every edit the state is written to a journal off the
 * asking thread; a plan without a file has a folder of its own in the data folder until it is
 * saved.
 */
public final class PlanStorage implements AutoCloseable {
  private static final String UNTITLED = "plan";

  /** How long an edit waits for the one before it to be on disk, ms. */
  private static final long SLOW = 500;

  private final Desk desk;
  private final DeskSettings settings;
  private final Path untitledRoot;
  private final Executor home;
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "journal");
            t.setDaemon(true);
            return t;
          });
  private Future<?> written = CompletableFuture.completedFuture(null);
  private final AtomicReference<Optional<Entry>> next = new AtomicReference<>(Optional.empty());
  private Optional<Path> folder = Optional.empty();

  /** What is to be journalled; a newer one stands in for it as long as it has not been begun. */
  private record Entry(Journal journal, Site site) {}

  /**
   * Listens to the desk.
   *
   * @param data the user's data folder
   * @param home the asking thread, as an executor
   */
  public PlanStorage(Desk desk, DeskSettings settings, Path data, Executor home) {
    this.desk = desk;
    this.settings = settings;
    this.untitledRoot = data.resolve("untitled");
    this.home = home;
    desk.siteChanged().subscribe(this::journal);
  }

  /** Begins a plan that has no file yet. */
  public void begin(String name, UnitSystem units) {
    begin(Site.empty(name, units), freshFolder());
  }

  private void begin(Site site, Path in) {
    folder = Optional.of(in);
    desk.open(site, Optional.empty());
  }

  private Path freshFolder() {
    String stamp =
        LocalDateTime.now(java.time.ZoneId.systemDefault())
            .format(DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS", Locale.ROOT));
    return untitledRoot.resolve(stamp);
  }

  /** The folder that graphics and pictures of the open plan lie in; made when it is not there. */
  public Path folder() throws IOException {
    Path f = folder.orElseThrow(() -> new IOException("no plan is open"));
    Files.createDirectories(f);
    return f;
  }

  /** The path that graphics are relative to: the plan file, or what it would be. */
  public Optional<Path> plan() {
    return desk.file().or(() -> folder.map(f -> f.resolve("untitled.site.json")));
  }

  /** Opens a plan file; what a crash left in its journal comes back as one step. */
  public void open(Path file) {
    Result<Site> reading = PlanFile.read(file);
    if (reading instanceof Result.Refused<Site> bad) {
      desk.refuse(first(file, bad.refusals()));
      return;
    }
    Site saved = reading.orThrow();
    folder = Optional.ofNullable(file.toAbsolutePath().getParent());
    Optional<Site> left = left(Journal.beside(file)).filter(s -> !s.equals(saved));
    History past = History.of(saved);
    desk.open(
        left.map(s -> past.push(Message.of("desk.model.plan-storage.recovered-work"), s))
            .orElse(past),
        Optional.of(file));
    settings.addRecent(file);
  }

  private static Refusal first(Path file, List<Refusal> faults) {
    Refusal first = faults.get(0);
    Message words =
        Message.of(
            "desk.model.plan-storage.faults",
            file.getFileName().toString(),
            first.message(),
            faults.size() - 1);
    return new Refusal(words, first.place(), first.where());
  }

  private static Optional<Site> left(Journal journal) {
    try {
      return journal.recover();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Goes on with an untitled plan that was never saved, or with a plan whose journal was left. */
  public void recover(Path what) {
    if (Files.isDirectory(what)) {
      Optional<Site> site = left(Journal.untitled(what, UNTITLED));
      site.ifPresentOrElse(
          s -> begin(s, what),
          () ->
              desk.refuse(
                  Message.of("desk.model.plan-storage.journal-unreadable", what.toString())));
    } else {
      open(what);
    }
  }

  /** Plans that were not saved when the program last ended. */
  public List<Path> recoverable() {
    List<Path> found = new ArrayList<>();
    settings.recent().stream()
        .filter(p -> Files.exists(Journal.beside(p).file()))
        .forEach(found::add);
    if (Files.isDirectory(untitledRoot)) {
      try (Stream<Path> all = Files.list(untitledRoot)) {
        all.filter(d -> Files.exists(Journal.untitled(d, UNTITLED).file()))
            .sorted((a, b) -> b.compareTo(a))
            .limit(5)
            .forEach(found::add);
      } catch (IOException e) {
        return found;
      }
    }
    return found;
  }

  /** Saves to the plan's file; false when it has none yet. */
  public boolean save() {
    desk.file().ifPresent(this::saveAs);
    return desk.file().isPresent();
  }

  /** Saves to a file, with the graphics of an untitled plan copied beside it. */
  public void saveAs(Path file) {
    Site site = desk.site();
    Optional<Journal> old = currentJournal();
    try {
      Path to = file.toAbsolutePath().getParent();
      if (folder.isPresent() && !folder.get().equals(to)) {
        SiblingFiles.copyAll(site, folder.get(), to);
      }
      Optional<Path> before = plan().filter(p -> !p.toAbsolutePath().equals(file.toAbsolutePath()));
      if (before.isPresent()) {
        new ReleaseArchive(before.get()).copyTo(file, site);
      }
      PlanFile.save(site, file);
      folder = Optional.of(to);
      desk.savedTo(file);
      settings.addRecent(file);
      next.set(Optional.empty());
      writer.execute(() -> old.ifPresent(this::clear));
    } catch (IOException e) {
      desk.refuse(Message.of("desk.model.plan-storage.not-saved", file.toString(), said(e)));
    }
  }

  private static String said(IOException e) {
    return String.valueOf(e.getMessage());
  }

  private void clear(Journal journal) {
    try {
      journal.clear();
    } catch (IOException e) {
      home.execute(
          () -> desk.refuse(Message.of("desk.model.plan-storage.journal-not-cleared", said(e))));
    }
  }

  private Optional<Journal> currentJournal() {
    return desk.file()
        .map(Journal::beside)
        .or(() -> folder.map(f -> Journal.untitled(f, UNTITLED)));
  }

  private void journal() {
    Optional<Journal> j = currentJournal();
    boolean untouched = desk.history().position() == 0 && desk.file().isPresent();
    if (!desk.isOpen() || j.isEmpty() || untouched) {
      return;
    }
    awaitLast();
    next.set(Optional.of(new Entry(j.get(), desk.site())));
    written = writer.submit(() -> next.getAndSet(Optional.empty()).ifPresent(this::write));
  }

  /** The edit before is on disk before the next one is journalled, unless the disk is very slow. */
  private void awaitLast() {
    try {
      written.get(SLOW, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      desk.refuse(
          Message.of(
              "desk.model.fault.journal",
              UnexpectedFault.text(new IllegalStateException(e.getCause()))));
    } catch (TimeoutException e) {
      // It is still being written; the newest state takes the place of whatever waits behind it.
      return;
    }
  }

  private void write(Entry entry) {
    try {
      entry.journal().write(entry.site());
    } catch (IOException e) {
      home.execute(
          () -> desk.refuse(Message.of("desk.model.plan-storage.journal-not-written", said(e))));
    }
  }

  /** Waits until everything asked for is on disk; for closing. */
  @Override
  public void close() {
    writer.shutdown();
    try {
      if (!writer.awaitTermination(5, TimeUnit.SECONDS)) {
        writer.shutdownNow();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
