package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.air.AirPlanSheet;
import slabwright.sheets.air.CautionSheet;
import slabwright.sheets.days.DayPlanSheet;
import slabwright.sheets.days.LanesSheet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.Paginator;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.SheetOptions;
import slabwright.sheets.placement.PlacementSheet;
import slabwright.sheets.prep.PrepSheet;
import slabwright.sheets.quantities.QuantitiesSheet;
import slabwright.sheets.scope.HandoverSheet;
import slabwright.sheets.scope.ScopeSheet;
import slabwright.sheets.site.LayoutSheet;
import slabwright.sheets.stencil.StencilSheet;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.work.AreaResult;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.handover.Handovers;
import slabwright.work.handover.Scope;

/** All sheets of a site, floor area by floor area, numbered through. */
public final class SheetSet {
  private final SheetContext context;
  private final MissingPages missing;

  private SheetSet(SheetContext context, MissingPages missing) {
    this.context = context;
    this.missing = missing;
  }

  /** The pages that need no shop book: sheets 1 to 5 of every floor area. */
  public static List<PrintedPage> of(Site site, List<AreaResult> areas, SheetOptions options) {
    return of(site, areas, Optional.empty(), options);
  }

  /** All pages in the order they are handed out: first area by area, then the work on the site. */
  public static List<PrintedPage> of(
      Site site, List<AreaResult> areas, Optional<WorkPlan> work, SheetOptions options) {
    return of(site, areas, work, options, new PartFaults());
  }

  /**
   * The same.
   *
   * @param faults told of pages that could not be made; the first page tells them as well
   */
  public static List<PrintedPage> of(
      Site site,
      List<AreaResult> areas,
      Optional<WorkPlan> work,
      SheetOptions options,
      PartFaults faults) {
    SheetContext context =
        new SheetContext(PageFrame.of(options.paper()), site.units(), options.words());
    SheetSet set = new SheetSet(context, new MissingPages(faults));
    List<PageDraft> drafts = new ArrayList<>();
    for (AreaResult area : areas) {
      drafts.addAll(set.area(area, work));
    }
    work.ifPresent(w -> drafts.addAll(set.work(w, areas)));
    work.ifPresent(w -> drafts.addAll(set.handovers(site, areas, w)));
    drafts.addAll(0, MissingPages.notice(context, faults.all(), List.of()));
    return Paginator.paginate(drafts, context, PacketContents.issue(site, options.date()));
  }

  private List<PageDraft> care(Message title, String area, Supplier<List<PageDraft>> pages) {
    return missing.or(context, title, area, true, pages);
  }

  private List<PageDraft> plain(Message title, String area, Supplier<List<PageDraft>> pages) {
    return missing.or(context, title, area, false, pages);
  }

  private List<PageDraft> handovers(Site site, List<AreaResult> areas, WorkPlan work) {
    Message title = Message.of("sheets.missing-pages.handovers");
    HandoverSheet handovers = new HandoverSheet(context);
    List<PageDraft> drafts = new ArrayList<>();
    for (AreaResult area : areas) {
      String name = area.takeoff().area().name();
      area.inlays()
          .forEach(i -> drafts.addAll(plain(title, name, () -> handovers.approval(site, area, i))));
    }
    drafts.addAll(plain(title, "", () -> handovers.drafts(Handovers.of(work))));
    return drafts;
  }

  private List<PageDraft> area(AreaResult result, Optional<WorkPlan> work) {
    FloorArea area = result.takeoff().area();
    String name = area.name();
    Message layout = Message.of("sheets.layout-sheet.title");
    Message prep = Message.of("sheets.prep-sheet.title");
    Message placement = Message.of("sheets.placement-sheet.title");
    Message stencil = Message.of("sheets.stencil-sheet.title");
    Message quantities = Message.of("sheets.quantities-sheet.title");
    List<PageDraft> drafts =
        new ArrayList<>(plain(layout, name, () -> new LayoutSheet(area, context).drafts()));
    drafts.addAll(plain(prep, name, () -> new PrepSheet(result.ways(), context).drafts()));
    for (PlacedInlay inlay : result.inlays()) {
      drafts.addAll(
          plain(placement, name, () -> new PlacementSheet(result, inlay, context).drafts()));
      drafts.addAll(plain(stencil, name, () -> new StencilSheet(area, inlay, context).drafts()));
    }
    Optional<AreaWorkPlan> known = work.flatMap(w -> w.area(area.id()));
    Optional<String> origin = work.map(w -> context.words().say(w.book().origin()));
    drafts.addAll(
        plain(
            quantities, name, () -> new QuantitiesSheet(result, known, origin, context).drafts()));
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

  private List<PageDraft> work(WorkPlan plan, List<AreaResult> areas) {
    Message days = Message.of("sheets.day-plan-sheet.title");
    Message lanes = Message.of("sheets.lanes-sheet.title");
    Message cautions = Message.of("sheets.caution-sheet.title");
    Message air = Message.of("sheets.air-plan-sheet.title");
    Message scope = Message.of("sheets.scope-sheet.title");
    List<PageDraft> drafts =
        new ArrayList<>(care(days, "", () -> new DayPlanSheet(plan, context).drafts()));
    for (AreaResult r : areas) {
      plan.area(r.takeoff().area().id())
          .ifPresent(a -> drafts.addAll(plain(lanes, a.name(), () -> lanes(plan, r, a))));
    }
    for (AreaWorkPlan a : plan.areas()) {
      drafts.addAll(care(cautions, a.name(), () -> new CautionSheet(a, plan, context).drafts()));
      drafts.addAll(care(air, a.name(), () -> airPlan(a, areas, context)));
    }
    drafts.addAll(plain(scope, "", () -> new ScopeSheet(plan, Scope.of(plan), context).drafts()));
    return drafts;
  }

  private List<PageDraft> lanes(WorkPlan plan, AreaResult area, AreaWorkPlan work) {
    return LanesSheet.all(
        area.takeoff(),
        work.coats().stream().filter(c -> !plan.outlook().isHeld(work.id(), c)).toList(),
        context.words().say(plan.book().origin()),
        context);
  }
}
