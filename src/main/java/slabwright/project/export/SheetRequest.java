package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.cutfile.CutFileParameters;
import slabwright.sheets.SheetSet;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetOptions;
import slabwright.site.Site;
import slabwright.units.Parsed;
import slabwright.work.AreaResult;

/**
 * All that is needed to make the sheets of a site as it was when asked, off the asking thread.
 *
 * @param plan its file
 * @param known the site worked out, when it has been already
 * @param made its pages on the paper, when they have been made already; else empty
 */
public record SheetRequest(
    Site site,
    Path plan,
    PaperSize paper,
    Optional<SiteComputation.ComputedSite> known,
    List<PrintedPage> made) {
  public SheetRequest {
    made = List.copyOf(made);
  }

  /** The site worked out; refused when an inlay of it can't be. */
  public Parsed<SiteComputation.ComputedSite> compute(BackgroundTasks.TaskProgress steps)
      throws IOException {
    Parsed<SiteComputation.ComputedSite> work =
        known.isPresent()
            ? Parsed.ok(known.get())
            : SiteComputation.work(site, plan, steps::isCancelled);
    if (work instanceof Parsed.Bad<SiteComputation.ComputedSite>) {
      return work;
    }
    for (AreaResult a : work.orThrow().areas()) {
      for (PlacedInlay.Placing.Refused r : a.refused()) {
        return Parsed.bad("\"" + r.inlay().name() + "\": " + r.sentence());
      }
    }
    return work;
  }

  /** Its pages. */
  public List<PrintedPage> pages(SiteComputation.ComputedSite done) {
    return made.isEmpty() ? pages(done, paper) : made;
  }

  public static List<PrintedPage> pages(SiteComputation.ComputedSite done, PaperSize paper) {
    SheetOptions options = new SheetOptions(paper, LocalDate.now(ZoneId.systemDefault()));
    return SheetSet.of(done.site(), done.areas(), Optional.of(done.work()), options);
  }

  /** What every file's name begins with: the site and its release. */
  public static String fileNameStem(SiteComputation.ComputedSite done) {
    int release = done.site().releaseNumber();
    return CutFileParameters.slug(done.site().name(), "site")
        + (release == 0 ? "-draft" : "-release-" + release);
  }
}
