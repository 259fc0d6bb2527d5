package slabwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slabwright.project.RefusedInput;
import slabwright.project.SiteResult;
import slabwright.site.Site;
import slabwright.site.job.DayForecast;
import slabwright.store.ForecastFile;
import slabwright.store.PlanFile;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;
import slabwright.work.AreaResult;
import slabwright.work.book.ShopBookFile;

/** Reads plans for the commands. */
final class PlanLoader {
  private PlanLoader() {}

  static Site read(Path plan) throws RefusedInput {
    return orRefuse(PlanFile.read(plan));
  }

  /**
   * The site with the days of a forecast file in place of those of the plan; ends the command at
   * the file's first bad line.
   *
   * @param file or null for none
   */
  static Site withForecast(Site site, Path file) throws RefusedInput {
    if (file == null) {
      return site;
    }
    List<DayForecast> read = orRefuse(ForecastFile.read(file));
    Set<LocalDate> said = read.stream().map(DayForecast::on).collect(Collectors.toSet());
    List<DayForecast> days =
        Stream.concat(
                site.job().forecast().stream().filter(d -> !said.contains(d.on())), read.stream())
            .sorted(Comparator.comparing(DayForecast::on))
            .toList();
    return site.withJob(site.job().withForecast(days));
  }

  /** Ends the command when an inlay of the plan could not be computed. */
  private static void refuse(List<AreaResult> areas) throws RefusedInput {
    List<Refusal> all =
        areas.stream()
            .flatMap(a -> a.refused().stream())
            .map(r -> Message.of("cli.plan-loader.inlay", r.inlay().name(), r.message()))
            .map(Refusal::of)
            .toList();
    if (!all.isEmpty()) {
      throw RefusedInput.of(all);
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

  /** The value, or the end of the command with what stands against it. */
  static <T> T orRefuse(Result<T> found) throws RefusedInput {
    if (found instanceof Result.Refused<T> bad) {
      throw RefusedInput.of(bad.refusals());
    }
    return found.orThrow();
  }
}
