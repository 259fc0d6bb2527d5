package slabwright.cli;

import java.nio.file.Path;
import java.util.List;
import slabwright.sheets.AreaResult;
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

  /** Ends the command when an inlay of the plan could not be computed. */
  static void refuse(List<AreaResult> areas) throws CliRefusal {
    List<String> sentences =
        areas.stream()
            .flatMap(a -> a.refused().stream())
            .map(r -> "Inlay \"" + r.inlay().name() + "\": " + r.sentence())
            .toList();
    if (!sentences.isEmpty()) {
      throw new CliRefusal(sentences);
    }
  }
}
