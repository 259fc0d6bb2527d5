package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.project.plan.BackgroundWriter;
import slabwright.project.plan.UnfinishedWalkFile;
import slabwright.shape.Vec;
import slabwright.tape.TapeWalk;
import slabwright.units.Result;

/** Keeps an unfinished walk on disk, wall by wall, so that a crash loses none of it. */
public final class TapeWalkJournal {
  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final BackgroundWriter writer;
  private Optional<Kept> last = Optional.empty();

  /** What may not be on disk yet. */
  private record Kept(UnfinishedWalkFile file, TapeWalk walk) {}

  public TapeWalkJournal(Desk desk, Supplier<Optional<Path>> plan, BackgroundWriter writer) {
    this.desk = desk;
    this.plan = plan;
    this.writer = writer;
  }

  private Optional<UnfinishedWalkFile> file() {
    return plan.get().map(UnfinishedWalkFile::new);
  }

  /** Writes the walk as it is; a walk without walls leaves nothing. */
  public void keep(TapeWalk walk) {
    last = file().map(f -> new Kept(f, walk));
    last.ifPresent(k -> k.file().write(walk, writer, desk::refuse));
  }

  /** The walk left behind, from the start given; one without walls when there is none. */
  public TapeWalk left(Vec start) {
    Optional<TapeWalk> kept =
        last.filter(k -> file().equals(Optional.of(k.file()))).map(Kept::walk);
    if (kept.isPresent()) {
      return new TapeWalk(start, kept.get().walls());
    }
    Optional<Result<TapeWalk>> read = file().map(f -> f.read(start));
    if (read.isPresent() && read.get() instanceof Result.Refused<TapeWalk> refused) {
      desk.refuse(refused.refusals().get(0));
    }
    return read.filter(Result::isOk).map(Result::orThrow).orElseGet(() -> TapeWalk.from(start));
  }
}
