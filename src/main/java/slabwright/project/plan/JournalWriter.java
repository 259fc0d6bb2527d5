package slabwright.project.plan;

import java.util.Optional;
import java.util.function.Consumer;
import slabwright.site.Site;
import slabwright.store.Journal;
import slabwright.units.Message;

/** Writes the state of a plan to its journal after every edit. */
public final class JournalWriter {
  /** How long an edit waits for the one before it to be on disk, ms. */
  private static final long SLOW = 500;

  private final BackgroundWriter writer;
  private final Consumer<Message> fault;
  private Optional<Journal> last = Optional.empty();

  /**
   * A writer.
   *
   * @param fault told why a journal could not be written or cleared
   */
  public JournalWriter(BackgroundWriter writer, Consumer<Message> fault) {
    this.writer = writer;
    this.fault = fault;
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
          journal.write(site);
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
          journal.clear();
          return journal;
        },
        j -> {},
        why -> fault.accept(Message.of("project.plan.journal-not-cleared", why)));
  }
}
