package slabwright.project.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import slabwright.site.Site;
import slabwright.store.PlanFile;
import slabwright.store.ReleaseArchive;
import slabwright.units.Result;

/**
 * A release that is frozen and stands in the plan's file.
 *
 * @param copy folder of its frozen copy
 */
public record IssuedRelease(int number, Path copy) {
  /**
   * Issues the next release of a plan on disk and saves the plan, which carries its number from
   * then on. Refused when the plan can't be read or the release can't be issued.
   *
   * @throws IOException when a file can't be read or written; the plan is left as it was then
   */
  public static Result<IssuedRelease> issue(Path plan, String note, LocalDate today)
      throws IOException {
    Result<Site> read = PlanFile.read(plan);
    if (read instanceof Result.Refused<Site> bad) {
      return Result.refused(bad.refusals());
    }
    Site site = read.orThrow();
    Result<FrozenRelease> frozen = ReleaseFiles.freeze(plan, site, note, today);
    if (frozen instanceof Result.Refused<FrozenRelease> bad) {
      return Result.refused(bad.refusals());
    }
    FrozenRelease release = frozen.orThrow();
    PlanFile.save(release.edit().apply(site).orThrow(), plan);
    return Result.ok(
        new IssuedRelease(release.number(), new ReleaseArchive(plan).folder(release.number())));
  }
}
