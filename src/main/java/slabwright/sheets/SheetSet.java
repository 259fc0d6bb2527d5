package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.air.AirPlanSheet;
import slabwright.sheets.air.CautionSheet;
import slabwright.sheets.days.DayPlanSheet;
import slabwright.sheets.days.LanesSheet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.Paginator;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.SheetOptions;
import slabwright.sheets.page.TitleStripText;
import slabwright.sheets.placement.PlacementSheet;
import slabwright.sheets.prep.PrepSheet;
import slabwright.sheets.quantities.QuantitiesSheet;
import slabwright.sheets.scope.HandoverSheet;
import slabwright.sheets.scope.ScopeSheet;
import slabwright.sheets.site.LayoutSheet;
import slabwright.sheets.stencil.StencilSheet;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.work.AreaResult;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.handover.Handovers;
import slabwright.work.handover.Scope;

/** All sheets of a site, floor area by floor area, numbered through. */
public final class SheetSet {
  private SheetSet() {}

  /** The pages that need no shop book: sheets 1 to 5 of every floor area. */
  public static List<PrintedPage> of(Site site, List<AreaResult> areas, SheetOptions options) {
    return of(site, areas, Optional.empty(), options);
  }

  /** All pages in the order they are handed out: first area by area, then the work on the site. */
  public static List<PrintedPage> of(
      Site site, List<AreaResult> areas, Optional<WorkPlan> work, SheetOptions options) {
    SheetContext context =
        new SheetContext(PageFrame.of(options.paper()), site.units(), options.words());
    TitleStripText issue = PacketContents.issue(site, options.date());
    List<PageDraft> drafts = new ArrayList<>();
    for (AreaResult area : areas) {
      drafts.addAll(area(area, work, context));
    }
    work.ifPresent(w -> drafts.addAll(work(w, areas, context)));
    if (work.isPresent()) {
      HandoverSheet handovers = new HandoverSheet(context);
      for (AreaResult area : areas) {
        area.inlays().forEach(i -> drafts.addAll(handovers.approval(site, area, i)));
      }
      drafts.addAll(handovers.drafts(Handovers.of(work.get())));
    }
    return Paginator.paginate(drafts, context, issue);
  }

  private static List<PageDraft> area(
      AreaResult result, Optional<WorkPlan> work, SheetContext context) {
    FloorArea area = result.takeoff().area();
    List<PageDraft> drafts = new ArrayList<>(new LayoutSheet(area, context).drafts());
    drafts.addAll(new PrepSheet(result.ways(), context).drafts());
    for (PlacedInlay inlay : result.inlays()) {
      drafts.addAll(new PlacementSheet(result, inlay, context).drafts());
      drafts.addAll(new StencilSheet(area, inlay, context).drafts());
    }
    Optional<AreaWorkPlan> known = work.flatMap(w -> w.area(area.id()));
    drafts.addAll(
        new QuantitiesSheet(
                result, known, work.map(w -> context.words().say(w.book().origin())), context)
            .drafts());
    return drafts;
  }

  private static List<PageDraft> airPlan(
      AreaWorkPlan work, List<AreaResult> areas, SheetContext context) {
    return areas.stream()
        .map(AreaResult::takeoff)
        .filter(t -> t.area().id().equals(work.id()))
        .flatMap(
            t ->
                work.air().maybe().filter(CautionSheet::hasSolvent).stream()
                    .flatMap(air -> new AirPlanSheet(t, air, context).drafts().stream()))
        .toList();
  }

  private static List<PageDraft> work(WorkPlan plan, List<AreaResult> areas, SheetContext context) {
    List<PageDraft> drafts = new ArrayList<>(new DayPlanSheet(plan, context).drafts());
    for (AreaResult r : areas) {
      plan.area(r.takeoff().area().id())
          .ifPresent(
              a ->
                  drafts.addAll(
                      LanesSheet.all(
                          r.takeoff(),
                          a.coats().stream()
                              .filter(c -> !plan.outlook().isHeld(a.id(), c))
                              .toList(),
                          context.words().say(plan.book().origin()),
                          context)));
    }
    for (AreaWorkPlan a : plan.areas()) {
      drafts.addAll(new CautionSheet(a, plan, context).drafts());
      drafts.addAll(airPlan(a, areas, context));
    }
    Scope scope = Scope.of(plan);
    drafts.addAll(new ScopeSheet(plan, scope, context).drafts());
    return drafts;
  }
}
