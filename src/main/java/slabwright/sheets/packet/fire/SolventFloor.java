package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.sheets.air.CautionSheet;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;

/** A floor with solvent on it. */
record SolventFloor(AreaWorkPlan work, AirPlan air) {

  /** All of a job, the largest first. */
  static List<SolventFloor> of(WorkPlan plan) {
    List<SolventFloor> floors = new ArrayList<>();
    for (AreaWorkPlan work : plan.areas()) {
      work.air()
          .maybe()
          .filter(CautionSheet::hasSolvent)
          .ifPresent(a -> floors.add(new SolventFloor(work, a)));
    }
    floors.sort(Comparator.comparingDouble((SolventFloor f) -> -f.work().floor().floor().area()));
    return floors;
  }
}
