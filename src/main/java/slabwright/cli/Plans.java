package slabwright.cli;

import java.nio.file.Path;
import slabwright.site.Site;
import slabwright.store.PlanFile;

/** Reads plans for the commands. */
final class Plans {
  private Plans() {}

  static Site read(Path plan) throws CliRefusal {
    PlanFile.Reading reading = PlanFile.read(plan);
    if (reading instanceof PlanFile.Reading.Good good) {
      return good.site();
    }
    throw CliRefusal.of(((PlanFile.Reading.Bad) reading).faults());
  }
}
