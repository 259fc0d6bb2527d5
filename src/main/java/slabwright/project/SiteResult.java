package slabwright.project;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import slabwright.site.Site;
import slabwright.work.AreaResult;
import slabwright.work.AreaTakeoff;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.ShopBook;

/** All that is computed of a site: every floor area, and the work by the shop book. */
public record SiteResult(Site site, List<AreaResult> areas, WorkPlan work) {
  public SiteResult {
    areas = List.copyOf(areas);
  }

  /**
   * Computes everything.
   *
   * @param folder that graphics are relative to
   * @throws IOException when a graphic breaks while it is read
   * @throws java.util.concurrent.CancellationException when {@code cancelled} turned true
   */
  public static SiteResult of(Site site, Path folder, ShopBook book, BooleanSupplier cancelled)
      throws IOException {
    List<AreaResult> areas = AreaResult.of(site, folder, cancelled);
    List<AreaTakeoff> floors = areas.stream().map(SiteResult::floor).toList();
    return new SiteResult(site, areas, WorkPlan.of(site, floors, book));
  }

  private static AreaTakeoff floor(AreaResult a) {
    return AreaTakeoff.of(
        a.takeoff(), a.inlays().stream().map(i -> InlayTakeoff.of(i.inlay(), i.plan())).toList());
  }
}
