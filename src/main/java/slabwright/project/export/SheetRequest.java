package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.cutfile.CutFileParameters;
import slabwright.project.SiteResult;
import slabwright.project.TaskProgress;
import slabwright.sheets.SheetSet;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetOptions;
import slabwright.site.Site;
import slabwright.units.Parsed;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * All that is needed to make the sheets of a site as it was when asked, off the asking thread.
 *
 * @param plan its file
 * @param known the site worked out, when it has been already
 * @param made its pages on the paper, when they have been made already; else empty
 */
public record SheetRequest(
    Site site, Path plan, PaperSize paper, Optional<SiteResult> known, List<PrintedPage> made) {
  public SheetRequest {
    made = List.copyOf(made);
  }

  /** The site worked out; refused when an inlay of it can't be. */
  public Parsed<SiteResult> compute(TaskProgress steps) throws IOException {
    Parsed<SiteResult> work =
        known.isPresent()
            ? Parsed.ok(known.get())
            : SiteResult.compute(site, plan, steps::isCancelled);
    if (work instanceof Parsed.Bad<SiteResult>) {
      return work;
    }
    for (AreaResult a : work.orThrow().areas()) {
      for (PlacedInlay.Placing.Refused r : a.refused()) {
        return Parsed.bad("\"" + r.inlay().name() + "\": " + Words.english().say(r.message()));
      }
    }
    return work;
  }

  /** Its pages. */
  public List<PrintedPage> pages(SiteResult done) {
    return made.isEmpty() ? pages(done, paper) : made;
  }

  public static List<PrintedPage> pages(SiteResult done, PaperSize paper) {
    SheetOptions options =
        new SheetOptions(paper, LocalDate.now(ZoneId.systemDefault()), Words.english());
    return SheetSet.of(done.site(), done.areas(), Optional.of(done.work()), options);
  }

  /** What every file's name begins with: the site and its release. */
  public static String fileNameStem(SiteResult done) {
    int release = done.site().releaseNumber();
    return CutFileParameters.slug(done.site().name(), "site")
        + (release == 0 ? "-draft" : "-release-" + release);
  }
}
