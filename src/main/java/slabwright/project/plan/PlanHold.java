package slabwright.project.plan;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.stream.IntStream;
import slabwright.store.Journal;

/**
 * A window's hold on a plan: the journal that it alone writes, told from those of other windows by
 * a lock. The system takes the lock away when the process ends, however it ends.
 */
final class PlanHold implements AutoCloseable {
  /** Windows beyond so many share the first journal. */
  private static final int MOST = 8;

  private final Journal journal;
  private final int number;
  private final Optional<FileChannel> lock;

  private PlanHold(Journal journal, int number, Optional<FileChannel> lock) {
    this.journal = journal;
    this.number = number;
    this.lock = lock;
  }

  /**
   * The hold on the journal of a number, else on one that nobody writes and nothing was left in.
   *
   * @param first from 1
   */
  static PlanHold take(PlanLocation at, int first) {
    return IntStream.concat(IntStream.of(first), numbers())
        .filter(n -> n == first || !Files.exists(at.journal().numbered(n).file()))
        .mapToObj(n -> of(at, n))
        .flatMap(Optional::stream)
        .findFirst()
        .orElseGet(() -> new PlanHold(at.journal(), 1, Optional.empty()));
  }

  /** The numbers that journals of a plan may have. */
  static IntStream numbers() {
    return IntStream.rangeClosed(1, MOST);
  }

  /** The hold on one journal; empty while another window has it. */
  static Optional<PlanHold> of(PlanLocation at, int number) {
    Journal journal = at.journal().numbered(number);
    try {
      Files.createDirectories(at.folder());
      Optional<FileChannel> lock =
          locked(journal.lock(), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      return lock.map(l -> new PlanHold(journal, number, lock));
    } catch (IOException e) {
      // Where nothing can be locked a window goes on without; writing tells what is wrong.
      return Optional.of(new PlanHold(journal, number, Optional.empty()));
    }
  }

  /** Whether a window writes a journal now. */
  static boolean isHeld(Journal journal) {
    if (!Files.exists(journal.lock())) {
      return false;
    }
    try {
      Optional<FileChannel> lock = locked(journal.lock(), StandardOpenOption.WRITE);
      if (lock.isPresent()) {
        lock.get().close();
      }
      return lock.isEmpty();
    } catch (IOException e) {
      return false;
    }
  }

  /** Whether some other window has the plan open. */
  boolean isSharedAt(PlanLocation at) {
    return numbers().filter(n -> n != number).anyMatch(n -> isHeld(at.journal().numbered(n)));
  }

  private static Optional<FileChannel> locked(Path file, StandardOpenOption... how)
      throws IOException {
    FileChannel channel = FileChannel.open(file, how);
    boolean got = false;
    try {
      // One that let go this moment takes its file away; a lock on that says nothing.
      got = channel.tryLock() != null && Files.exists(file);
    } catch (OverlappingFileLockException e) {
      // A window of this very process has it.
      got = false;
    } finally {
      if (!got) {
        channel.close();
      }
    }
    return got ? Optional.of(channel) : Optional.empty();
  }

  /** Whether the system keeps others out; it can't in every folder. */
  boolean isLocked() {
    return lock.isPresent();
  }

  Journal journal() {
    return journal;
  }

  int number() {
    return number;
  }

  /** Lets go; what the journal holds stays. */
  @Override
  public void close() throws IOException {
    if (lock.isPresent()) {
      boolean gone = isDeleted(journal.lock());
      lock.get().close();
      if (!gone) {
        Files.deleteIfExists(journal.lock());
      }
    }
  }

  /** While it is locked nobody else can have taken it; some systems don't allow it then. */
  private static boolean isDeleted(Path file) {
    try {
      return Files.deleteIfExists(file);
    } catch (IOException e) {
      return false;
    }
  }
}
