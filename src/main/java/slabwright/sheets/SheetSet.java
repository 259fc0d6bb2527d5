package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.PlacedInlay;
import slabwright.site.Site;

/** All sheets of a site, floor area by floor area, numbered through. */
public final class SheetSet {
  private SheetSet() {}

  /** The pages in the order they are handed out. */
  public static List<Page> of(Site site, List<AreaResult> areas, SheetOptions options) {
    SheetContext context = new SheetContext(PageFrame.of(options.paper()), site.units());
    Issue issue = new Issue(site.name(), site.note(), site.releaseNumber(), options.date());
    List<Draft> drafts = new ArrayList<>();
    for (AreaResult area : areas) {
      drafts.addAll(new LayoutSheet(area.takeoff().area(), context).drafts());
      drafts.addAll(new HandSheet(area.takeoff(), context).drafts());
      for (PlacedInlay inlay : area.inlays()) {
        drafts.addAll(new PlacementSheet(area, inlay, context).drafts());
        drafts.addAll(new StencilSheet(area.takeoff().area(), inlay, context).drafts());
      }
      drafts.addAll(new QuantitiesSheet(area, context).drafts());
    }
    return Binder.bind(drafts, context, issue);
  }
}
