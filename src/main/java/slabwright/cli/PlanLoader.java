package slabwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import slabwright.project.RefusedInput;
import slabwright.project.SiteResult;
import slabwright.site.Site;
import slabwright.store.PlanFile;
import slabwright.units.Parsed;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.book.ShopBookFile;

/** Reads plans for the commands. */
final class PlanLoader {
  private PlanLoader() {}

  static Site read(Path plan, Words words) throws RefusedInput {
    Result<Site> reading = PlanFile.read(plan);
    if (reading instanceof Result.Refused<Site> bad) {
      throw RefusedInput.of(bad.refusals(), words);
    }
    return reading.orThrow();
  }

  /** Ends the command when an inlay of the plan could not be computed. */
  private static void refuse(List<AreaResult> areas) throws RefusedInput {
    List<String> sentences =
        areas.stream()
            .flatMap(a -> a.refused().stream())
            .map(r -> "Inlay \"" + r.inlay().name() + "\": " + Words.english().say(r.message()))
            .toList();
    if (!sentences.isEmpty()) {
      throw new RefusedInput(sentences);
    }
  }

  /**
   * Everything of a plan by its shop book, a draft when it is not what was last issued; ends the
   * command when an inlay can't be computed.
   */
  static SiteResult compute(Site site, Path plan) throws RefusedInput, IOException {
    SiteResult result = orRefuse(SiteResult.compute(site, plan, () -> false));
    refuse(result.areas());
    return result;
  }

  /** The shop book that a plan in this folder is worked out by. */
  static ShopBookFile bookFile(Path folder) throws RefusedInput, IOException {
    return orRefuse(SiteResult.bookFile(folder));
  }

  private static <T> T orRefuse(Parsed<T> found) throws RefusedInput {
    if (found instanceof Parsed.Bad<T> bad) {
      throw RefusedInput.of(bad.why());
    }
    return found.orThrow();
  }
}
