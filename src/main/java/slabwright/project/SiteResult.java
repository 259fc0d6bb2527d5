package slabwright.project;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import slabwright.site.Site;
import slabwright.store.ReleaseArchive;
import slabwright.units.Result;
import slabwright.work.AreaResult;
import slabwright.work.AreaTakeoff;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookFile;

/**
 * All that is computed of a site: every floor area, and the work by the shop book.
 *
 * @param site with the releases that sheets and cut files may carry: none when it changed since the
 *     last one
 * @param folder of the plan
 */
public record SiteResult(Site site, Path folder, List<AreaResult> areas, WorkPlan work) {
  public SiteResult {
    areas = List.copyOf(areas);
  }

  /**
   * Computes a site by the shop book at hand; refused when that can't be read as one. An inlay that
   * can't be computed is refused within its area.
   *
   * @param plan its file, which graphics and releases lie beside
   * @throws IOException when a graphic or the shop book breaks while it is read
   * @throws java.util.concurrent.CancellationException when {@code cancelled} turned true
   */
  public static Result<SiteResult> compute(Site site, Path plan, BooleanSupplier cancelled)
      throws IOException {
    return compute(site, plan, new AreaCache(), cancelled);
  }

  /**
   * Computes a site whose areas and inlays may be known already.
   *
   * @param areas of the plan as it was before; what changed since is added
   * @throws IOException as above
   * @throws java.util.concurrent.CancellationException when {@code cancelled} turned true
   */
  public static Result<SiteResult> compute(
      Site site, Path plan, AreaCache areas, BooleanSupplier cancelled) throws IOException {
    Path folder = plan.toAbsolutePath().getParent();
    Result<ShopBookFile> book = bookFile(folder);
    if (book instanceof Result.Refused<ShopBookFile> bad) {
      return Result.refused(bad.refusals());
    }
    Site issued = new ReleaseArchive(plan).withoutOutdatedReleases(site);
    return Result.ok(compute(issued, folder, ShopBook.of(book.orThrow().text()), areas, cancelled));
  }

  /**
   * Computes a site as it stands by a given shop book.
   *
   * @param folder that its graphics lie in
   * @throws IOException when a graphic breaks while it is read
   * @throws java.util.concurrent.CancellationException when {@code cancelled} turned true
   */
  public static SiteResult compute(Site site, Path folder, ShopBook book, BooleanSupplier cancelled)
      throws IOException {
    return compute(site, folder, book, new AreaCache(), cancelled);
  }

  private static SiteResult compute(
      Site site, Path folder, ShopBook book, AreaCache cache, BooleanSupplier cancelled)
      throws IOException {
    List<AreaResult> areas = cache.of(site, folder, cancelled);
    List<AreaTakeoff> floors = areas.stream().map(SiteResult::floor).toList();
    return new SiteResult(site, folder, areas, WorkPlan.of(site, floors, book));
  }

  /**
   * The shop book that a plan in this folder is worked out by: its own, or the one of the person.
   *
   * @throws IOException when the file can't be read at all
   */
  public static Result<ShopBookFile> bookFile(Path folder) throws IOException {
    return ShopBookFile.find(folder, Path.of(System.getProperty("user.home", ".")));
  }

  private static AreaTakeoff floor(AreaResult a) {
    return AreaTakeoff.of(
        a.takeoff(), a.inlays().stream().map(i -> InlayTakeoff.of(i.inlay(), i.plan())).toList());
  }
}
