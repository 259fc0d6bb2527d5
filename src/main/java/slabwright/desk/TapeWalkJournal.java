package slabwright.desk;

import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.project.plan.BackgroundWriter;
import slabwright.project.plan.UnfinishedWalkFile;
import slabwright.shape.Vec;
import slabwright.tape.TapeWalk;
import slabwright.units.Result;

/** Keeps an unfinished walk on disk, wall by wall, so that a crash loses none of it. */
final class TapeWalkJournal {
  private final Desk desk;
  private final Supplier<Optional<UnfinishedWalkFile>> file;
  private final BackgroundWriter writer;
  private Optional<Kept> last = Optional.empty();

  /** What may not be on disk yet. */
  private record Kept(UnfinishedWalkFile file, TapeWalk walk) {}

  /**
   * A journal.
   *
   * @param file this window's beside the plan that is open
   */
  public TapeWalkJournal(
      Desk desk, Supplier<Optional<UnfinishedWalkFile>> file, BackgroundWriter writer) {
    this.desk = desk;
    this.file = file;
    this.writer = writer;
  }

  /** Writes the walk as it is; a walk without walls leaves nothing. */
  public void keep(TapeWalk walk) {
    last = file.get().map(f -> new Kept(f, walk));
    last.ifPresent(k -> k.file().write(walk, writer, desk::refuse));
  }

  /** The walk left behind, from the start given; one without walls when there is none. */
  public TapeWalk left(Vec start) {
    Optional<UnfinishedWalkFile> now = file.get();
    Optional<TapeWalk> kept = last.filter(k -> now.equals(Optional.of(k.file()))).map(Kept::walk);
    if (kept.isPresent()) {
      return new TapeWalk(start, kept.get().walls());
    }
    Optional<Result<TapeWalk>> read = now.map(f -> f.read(start));
    if (read.isPresent() && read.get() instanceof Result.Refused<TapeWalk> refused) {
      desk.refuse(refused.refusals().get(0));
    }
    return read.filter(Result::isOk).map(Result::orThrow).orElseGet(() -> TapeWalk.from(start));
  }
}
