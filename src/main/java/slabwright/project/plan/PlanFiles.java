package slabwright.project.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import slabwright.project.SiblingFiles;
import slabwright.site.Site;
import slabwright.store.Journal;
import slabwright.store.PlanFile;
import slabwright.store.ReleaseArchive;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/**
 * Opens and saves plans, and finds those that were not saved when the program last ended.
 *
 * @param data the user's data folder: plans without a file lie in folders of their own in it
 */
public record PlanFiles(Path data) {
  private static final int MOST_UNTITLED = 5;
  private static final String ENDING = ".site.json";
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS", Locale.ROOT);

  private Path untitled() {
    return data.resolve("untitled");
  }

  /** A place for a plan begun now, taken by no other; nothing is made there yet. */
  public PlanLocation fresh(LocalDateTime now) {
    LocalDateTime free = now;
    while (Files.exists(untitled().resolve(STAMP.format(free)))) {
      // The clock was set back, or another window began one at the same moment.
      free = free.plusNanos(1_000_000);
    }
    return PlanLocation.untitled(untitled().resolve(STAMP.format(free)));
  }

  /** Reads a plan, and what a crash left in a journal of it. Refused with the first fault. */
  public static Result<OpenedPlan> open(Path file) {
    return open(file, j -> false);
  }

  /** The same in a window that already writes a journal of the plan. */
  public static Result<OpenedPlan> open(Path file, JournalWriter own) {
    return open(file, own::isMine);
  }

  private static Result<OpenedPlan> open(Path file, Predicate<Journal> mine) {
    Optional<String> stamp = stampOf(file);
    Result<Site> reading = PlanFile.read(file);
    if (reading instanceof Result.Refused<Site> refused) {
      return Result.refused(List.of(first(file, refused.refusals())));
    }
    Site saved = reading.orThrow();
    PlanLocation at = PlanLocation.file(file);
    int free = 0;
    for (int n : PlanHold.numbers().filter(k -> isFree(at, k, mine)).toArray()) {
      Optional<Site> left = left(at.journal().numbered(n));
      if (left.isPresent() && !isForgotten(at, n, saved, mine)) {
        return Result.ok(new OpenedPlan(saved, left, n, stamp));
      }
      free = free == 0 ? n : free;
    }
    return Result.ok(new OpenedPlan(saved, Optional.empty(), Math.max(1, free), stamp));
  }

  /** The stamp of a file that a plan was saved to. */
  public static String stamp(Site saved) {
    return PlanFile.stamp(saved);
  }

  /** Taken before the plan is read: who writes between is found out at the next save. */
  private static Optional<String> stampOf(Path file) {
    try {
      return PlanFile.stamp(file);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Refusal first(Path file, List<Refusal> faults) {
    Refusal first = faults.get(0);
    Message words =
        Message.of(
            "project.plan.faults",
            file.getFileName().toString(),
            first.message(),
            faults.size() - 1);
    return new Refusal(words, first.place(), first.where());
  }

  private static boolean isFree(PlanLocation at, int number, Predicate<Journal> mine) {
    Journal journal = at.journal().numbered(number);
    return mine.test(journal) || !PlanHold.isHeld(journal);
  }

  /** What a crash left in a journal; empty when there is nothing or it can't be read. */
  private static Optional<Site> left(Journal of) {
    try {
      return of.recover();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** A plan that was never saved, from the journal in its folder. */
  public static Result<Site> recover(Path folder) {
    return left(PlanLocation.untitled(folder).journal())
        .map(Result::ok)
        .orElseGet(
            () -> Result.refused(Message.of("project.plan.journal-unreadable", folder.toString())));
  }

  /**
   * A plan that can be gone on with as a process left it that ended without saving.
   *
   * @param plan its file, or the folder of one that was never saved
   * @param work what was left; empty when it can't be read
   */
  public record LeftPlan(Path plan, Optional<LeftWork> work) {}

  /**
   * Plans with work in a journal that no other window writes: files of those given, then folders of
   * untitled ones, latest first. Work that is saved already is none. It reads files.
   */
  public List<LeftPlan> recoverable(List<Path> recent, JournalWriter own) {
    List<LeftPlan> found = new ArrayList<>();
    for (Path file : recent) {
      left(file, PlanLocation.file(file), own::isMine).ifPresent(found::add);
    }
    if (Files.isDirectory(untitled())) {
      try (Stream<Path> all = Files.list(untitled())) {
        all.sorted(Comparator.reverseOrder())
            .flatMap(d -> left(d, PlanLocation.untitled(d), own::isMine).stream())
            .limit(MOST_UNTITLED)
            .forEach(found::add);
      } catch (IOException e) {
        return found;
      }
    }
    return found;
  }

  private static Optional<LeftPlan> left(Path what, PlanLocation at, Predicate<Journal> mine) {
    List<Integer> journals =
        PlanHold.numbers()
            .filter(n -> Files.exists(at.journal().numbered(n).file()) && isFree(at, n, mine))
            .boxed()
            .toList();
    Optional<Site> saved =
        journals.isEmpty() || !at.saved() ? Optional.empty() : saved(PlanFile.read(at.plan()));
    return journals.stream()
        .filter(n -> saved.isEmpty() || !isForgotten(at, n, saved.get(), mine))
        .findFirst()
        .map(n -> new LeftPlan(what, leftWork(at.journal().numbered(n))));
  }

  private static Optional<Site> saved(Result<Site> read) {
    return read instanceof Result.Ok<Site> good ? Optional.of(good.value()) : Optional.empty();
  }

  private static Optional<LeftWork> leftWork(Journal journal) {
    try {
      Instant last = Files.getLastModifiedTime(journal.file()).toInstant();
      return left(journal).map(site -> new LeftWork(site, last));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * Whether a journal holds no more than what is saved. One that was left is taken away then: it
   * would pass for newer work once somebody else has saved the plan.
   */
  private static boolean isForgotten(
      PlanLocation at, int number, Site saved, Predicate<Journal> mine) {
    Journal journal = at.journal().numbered(number);
    Optional<Site> same = Optional.of(saved);
    if (!left(journal).equals(same)) {
      return false;
    }
    if (!mine.test(journal)) {
      try {
        Optional<PlanHold> hold = PlanHold.of(at, number).filter(PlanHold::isLocked);
        if (hold.isPresent()) {
          if (left(journal).equals(same)) {
            journal.clear();
          }
          hold.get().close();
        }
      } catch (IOException e) {
        // It stays, and is compared again the next time.
        return true;
      }
    }
    return true;
  }

  /** What came of saving over a plan that was read before. */
  public enum Saving {
    SAVED,
    /** Somebody else wrote the file since; it was left as it is. */
    CHANGED_BY_OTHERS,
    /** The file that was read is there no longer; nothing was written. */
    GONE
  }

  /**
   * Saves a plan over the file it was read from, unless somebody else changed that since.
   *
   * @param stamp of what was last read or saved there
   * @throws IOException when something can't be written; the file is then as it was
   */
  public static Saving saveOver(Site site, Path file, String stamp) throws IOException {
    Optional<String> there = PlanFile.stamp(file);
    if (there.isEmpty()) {
      return Saving.GONE;
    }
    if (!there.get().equals(stamp) && !there.get().equals(PlanFile.stamp(site))) {
      return Saving.CHANGED_BY_OTHERS;
    }
    PlanFile.save(site, file);
    return Saving.SAVED;
  }

  /**
   * What somebody else wrote to a plan's file since it was read.
   *
   * @param known stamp of what was last read or saved there
   * @param site the plan as it is here: the same in the file is nobody else's
   * @return its stamp; empty when nothing was written or the file is there no longer
   * @throws IOException when the file can't be read
   */
  public static Optional<String> changedSince(Path file, String known, Site site)
      throws IOException {
    return PlanFile.stamp(file)
        .filter(there -> !there.equals(known) && !there.equals(PlanFile.stamp(site)));
  }

  /**
   * Copies what somebody else wrote to a plan's file to one beside it, so that it can be written
   * over.
   *
   * @throws IOException when it can't be made
   */
  public static Aside putAside(Path file) throws IOException {
    String name = file.getFileName().toString();
    String stem = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    int n = 1;
    while (Files.exists(aside(file, stem, n))) {
      n++;
    }
    Path copy = Files.copy(file, aside(file, stem, n));
    return new Aside(copy, PlanFile.stamp(copy).orElseThrow());
  }

  /** A copy of what somebody else wrote, and its stamp. */
  public record Aside(Path copy, String stamp) {}

  private static Path aside(Path file, String stem, int n) {
    return file.resolveSibling(stem + "-other-" + n + ENDING);
  }

  /**
   * Saves a plan to a file, with its graphics and the frozen copies of its releases where it lay
   * elsewhere before. The journal is left as it is.
   *
   * @throws IOException when something can't be written; the file is then as it was
   */
  public static void save(Site site, Optional<PlanLocation> before, Path file) throws IOException {
    Path to = file.toAbsolutePath().getParent();
    if (before.isPresent() && !before.get().folder().equals(to)) {
      SiblingFiles.copyAll(site, before.get().folder(), to);
    }
    Optional<Path> other =
        before.map(b -> b.plan().toAbsolutePath()).filter(p -> !p.equals(file.toAbsolutePath()));
    if (other.isPresent()) {
      new ReleaseArchive(other.get()).copyTo(file, site);
    }
    PlanFile.save(site, file);
  }
}
