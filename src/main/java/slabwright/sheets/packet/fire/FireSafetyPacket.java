package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.air.AirPlanSheet;
import slabwright.sheets.air.CautionSheet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;

/** Plan and form of every floor area where solvent is used. */
public final class FireSafetyPacket {
  private FireSafetyPacket() {}

  public static List<FramedDraft> drafts(PacketContents job) {
    SheetContext context = job.portrait();
    List<PageDraft> drafts = new ArrayList<>();
    for (AreaWorkPlan area : job.work().areas()) {
      Optional<AirPlan> air = area.air().maybe().filter(CautionSheet::hasSolvent);
      job.area(area.id())
          .ifPresent(
              a ->
                  air.ifPresent(
                      p -> drafts.addAll(new AirPlanSheet(a.takeoff(), p, context).drafts())));
      drafts.addAll(new CautionSheet(area, job.work(), context).drafts());
    }
    return FramedDraft.all(context, drafts);
  }
}
