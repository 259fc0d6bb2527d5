package slabwright.desk.model.edit;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.PlanItem;
import slabwright.site.Site;
import slabwright.site.job.PinnedPhoto;

/** Which photos are pinned to a thing on the plan. */
public final class PinnedTo {
  private PinnedTo() {}

  /** How a photo is pinned to a thing; empty for what takes none. */
  public static Optional<PinnedPhoto.Pin> of(PlanItem item) {
    if (item instanceof PlanItem.OfMark m) {
      return Optional.of(new PinnedPhoto.OnMark(m.id()));
    }
    return item instanceof PlanItem.OfCorner c
        ? Optional.of(new PinnedPhoto.OnCorner(c.index()))
        : Optional.empty();
  }

  /** The photos of a thing in a floor area, in the plan's order. */
  public static List<PinnedPhoto> photos(Site site, String area, PlanItem item) {
    return of(item)
        .map(
            pin ->
                site.job().photos().stream()
                    .filter(p -> p.area().equals(area) && p.pin().equals(pin))
                    .toList())
        .orElse(List.of());
  }
}
