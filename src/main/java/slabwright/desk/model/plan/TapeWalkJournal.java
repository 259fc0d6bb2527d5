package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.project.plan.UnfinishedWalkFile;
import slabwright.shape.Vec;
import slabwright.tape.TapeWalk;
import slabwright.units.Result;

/** Keeps an unfinished walk on disk, wall by wall, so that a crash loses none of it. */
public final class TapeWalkJournal {
  private final Desk desk;
  private final Supplier<Optional<Path>> plan;

  public TapeWalkJournal(Desk desk, Supplier<Optional<Path>> plan) {
    this.desk = desk;
    this.plan = plan;
  }

  private Optional<UnfinishedWalkFile> file() {
    return plan.get().map(UnfinishedWalkFile::new);
  }

  /** Writes the walk as it is; a walk without walls leaves nothing. */
  public void keep(TapeWalk walk) {
    file().flatMap(f -> f.write(walk)).ifPresent(desk::refuse);
  }

  /** The walk left behind, from the start given; one without walls when there is none. */
  public TapeWalk left(Vec start) {
    Optional<Result<TapeWalk>> read = file().map(f -> f.read(start));
    if (read.isPresent() && read.get() instanceof Result.Refused<TapeWalk> refused) {
      desk.refuse(refused.refusals().get(0));
    }
    return read.filter(Result::isOk).map(Result::orThrow).orElseGet(() -> TapeWalk.from(start));
  }
}
