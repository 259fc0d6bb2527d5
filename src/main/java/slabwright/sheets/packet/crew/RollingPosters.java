package slabwright.sheets.packet.crew;

import java.util.List;
import slabwright.sheets.packet.PacketContents;
import slabwright.work.AreaWorkPlan;
import slabwright.work.coat.CoatPlan;

/** Of which coats the packet has the lanes on a poster; rows of the days name no other one. */
record RollingPosters(PacketContents job) {
  /** Those rolled in lanes and not held: nobody is shown how to roll what may not be laid. */
  List<CoatPlan> coats(AreaWorkPlan work) {
    return work.coats().stream()
        .filter(
            c -> c.lanes().maybe().flatMap(l -> l).filter(l -> !l.lanes().isEmpty()).isPresent())
        .filter(c -> !job.work().outlook().isHeld(work.id(), c))
        .toList();
  }

  boolean show(String areaId, CoatPlan coat) {
    return job.work().area(areaId).filter(a -> coats(a).contains(coat)).isPresent();
  }
}
