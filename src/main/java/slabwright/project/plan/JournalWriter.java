package slabwright.project.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import slabwright.site.Site;
import slabwright.store.Journal;
import slabwright.units.Message;

/**
 * Writes the state of a plan to a journal after every edit. Each window has a journal of its own,
 * which it holds while the plan is open in it.
 */
public final class JournalWriter {
  /** How long an edit waits for the one before it to be on disk, ms. */
  private static final long SLOW = 500;

  private final BackgroundWriter writer;
  private final Consumer<Message> fault;
  private final Map<Journal, PlanHold> holds = new ConcurrentHashMap<>();
  private final Map<Journal, Integer> numbers = new ConcurrentHashMap<>();
  private Optional<Journal> last = Optional.empty();

  private record Holding(JournalWriter by, Journal of) {}

  private record Keeping(JournalWriter by) {}

  /**
   * A writer.
   *
   * @param fault told why a journal could not be written or cleared
   */
  public JournalWriter(BackgroundWriter writer, Consumer<Message> fault) {
    this.writer = writer;
    this.fault = fault;
  }

  /**
   * Holds a plan, so that other windows see that it is open here.
   *
   * @param number of the journal wanted
   * @param elsewhere told when another window has the plan open too
   */
  public void hold(PlanLocation at, int number, Runnable elsewhere) {
    writer.write(
        new Holding(this, at.journal()),
        () -> {
          at.needFolder();
          return taken(at, number).isSharedAt(at);
        },
        shared -> {
          if (shared) {
            elsewhere.run();
          }
        },
        why -> {});
  }

  /** Lets go of every plan but this one. */
  public void keepOnly(Optional<PlanLocation> open) {
    Optional<Journal> kept = open.map(PlanLocation::journal);
    writer.write(
        new Keeping(this),
        () -> {
          List<Journal> others =
              holds.keySet().stream().filter(j -> !kept.equals(Optional.of(j))).toList();
          for (Journal other : others) {
            holds.remove(other).close();
          }
          return kept;
        },
        k -> {},
        why -> {});
  }

  private PlanHold taken(PlanLocation at, int number) {
    PlanHold hold = holds.computeIfAbsent(at.journal(), j -> PlanHold.take(at, number));
    numbers.put(at.journal(), hold.number());
    return hold;
  }

  /** The number of the journal that a plan has or last had here. */
  public int number(PlanLocation at) {
    return numbers.getOrDefault(at.journal(), 1);
  }

  /**
   * The file for a room half taped in this window; it waits for the plan to be held, unless the
   * disk is very slow.
   */
  public UnfinishedWalkFile walk(PlanLocation at) {
    writer.await(new Holding(this, at.journal()), SLOW);
    return new UnfinishedWalkFile(at, number(at));
  }

  /** Whether this window writes a journal now. */
  boolean isMine(Journal journal) {
    return holds.values().stream().anyMatch(h -> h.journal().equals(journal));
  }

  /** Writes a state soon; the state before it is on disk by then, unless the disk is very slow. */
  public void write(PlanLocation at, Site site) {
    Journal journal = at.journal();
    last.ifPresent(l -> writer.await(l, SLOW));
    last = Optional.of(journal);
    writer.write(
        journal,
        () -> {
          at.needFolder();
          taken(at, number(at)).journal().write(site);
          return site;
        },
        s -> {},
        why -> fault.accept(Message.of("project.plan.journal-not-written", why)));
  }

  /** Forgets what is waiting, and the journal: the plan has been saved. */
  public void clear(PlanLocation at) {
    Journal journal = at.journal();
    writer.write(
        journal,
        () -> {
          clearNow(at);
          return journal;
        },
        j -> {},
        why -> fault.accept(Message.of("project.plan.journal-not-cleared", why)));
  }

  private void clearNow(PlanLocation at) throws IOException {
    PlanHold own = holds.get(at.journal());
    if (own != null) {
      own.journal().clear();
    } else if (Files.isDirectory(at.folder())) {
      Optional<PlanHold> free = PlanHold.of(at, number(at));
      if (free.isPresent()) {
        free.get().journal().clear();
        free.get().close();
      }
    }
  }
}
