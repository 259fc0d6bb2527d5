package slabwright.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.AreaResult;
import slabwright.sheets.Page;
import slabwright.sheets.Paper;
import slabwright.sheets.SheetOptions;
import slabwright.sheets.SheetSet;
import slabwright.site.Site;
import slabwright.units.Parsed;

/**
 * All that is needed to make the sheets of a site as it was when asked, off the asking thread.
 *
 * @param plan its file
 * @param known the site worked out, when it has been already
 * @param made its pages on the paper, when they have been made already; else empty
 */
public record SheetOrder(
    Site site, Path plan, Paper paper, Optional<Job.Done> known, List<Page> made) {
  public SheetOrder {
    made = List.copyOf(made);
  }

  /** The site worked out; refused when an inlay of it can't be. */
  public Parsed<Job.Done> work(Errands.Steps steps) throws IOException {
    Parsed<Job.Done> work =
        known.isPresent() ? Parsed.ok(known.get()) : Job.work(site, plan, steps::cancelled);
    if (work instanceof Parsed.Bad<Job.Done>) {
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
  public List<Page> pages(Job.Done done) {
    return made.isEmpty() ? pages(done, paper) : made;
  }

  static List<Page> pages(Job.Done done, Paper paper) {
    SheetOptions options = new SheetOptions(paper, LocalDate.now(ZoneId.systemDefault()));
    return SheetSet.of(done.site(), done.areas(), Optional.of(done.work()), options);
  }

  /** What every file's name begins with: the site and its release. */
  public static String stem(Job.Done done) {
    int release = done.site().releaseNumber();
    return slug(done.site().name()) + (release == 0 ? "-draft" : "-release-" + release);
  }

  private static String slug(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    String trimmed = plain.replaceAll("^-|-$", "");
    return trimmed.isEmpty() ? "site" : trimmed;
  }
}
