package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.project.SiteResult;
import slabwright.project.TaskProgress;
import slabwright.sheets.SheetSet;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetOptions;
import slabwright.site.Site;
import slabwright.units.FileName;
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * All that is needed to make the sheets of a site as it was when asked, off the asking thread.
 *
 * @param plan its file
 * @param known the site worked out, when it has been already
 * @param made its pages on the paper, when they have been made already; else empty
 * @param words they are printed in
 * @param clock says the day and moment they are made
 */
public record SheetRequest(
    Site site,
    Path plan,
    PaperSize paper,
    Optional<SiteResult> known,
    List<PrintedPage> made,
    Words words,
    Clock clock) {
  public SheetRequest {
    made = List.copyOf(made);
  }

  /** The site worked out; refused when an inlay of it can't be. */
  public Result<SiteResult> compute(TaskProgress steps) throws IOException {
    Result<SiteResult> work =
        known.isPresent()
            ? Result.ok(known.get())
            : SiteResult.compute(site, plan, steps::isCancelled);
    if (work instanceof Result.Refused<SiteResult>) {
      return work;
    }
    for (AreaResult a : work.orThrow().areas()) {
      for (PlacedInlay.Placing.Refused r : a.refused()) {
        return Result.refused(
            Message.of("project.export.inlay-refused", r.inlay().name(), r.message()));
      }
    }
    return work;
  }

  /** Its pages. */
  public List<PrintedPage> pages(SiteResult done) {
    return pages(done, new PartFaults());
  }

  /** Its pages; those that could not be made are told, where they had not been made already. */
  List<PrintedPage> pages(SiteResult done, PartFaults faults) {
    return made.isEmpty() ? pages(done, paper, words, today(), faults) : made;
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** Pages of a site worked out; of one that could not be made its first page tells. */
  public static List<PrintedPage> pages(
      SiteResult done, PaperSize paper, Words words, LocalDate today) {
    return pages(done, paper, words, today, new PartFaults());
  }

  /**
   * The same.
   *
   * @param faults told of pages that could not be made
   */
  public static List<PrintedPage> pages(
      SiteResult done, PaperSize paper, Words words, LocalDate today, PartFaults faults) {
    SheetOptions options = new SheetOptions(paper, today, words);
    return SheetSet.of(done.site(), done.areas(), Optional.of(done.work()), options, faults);
  }

  /** What a folder of the site's files is called: the site and its release. */
  static String folderName(SiteResult done) {
    int release = done.site().releaseNumber();
    return FileName.slug(done.site().name(), "site")
        + (release == 0 ? "-draft" : "-release-" + release);
  }
}
