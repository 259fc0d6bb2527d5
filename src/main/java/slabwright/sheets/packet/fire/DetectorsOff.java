package slabwright.sheets.packet.fire;

import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.SheetContext;
import slabwright.work.days.TimeSpan;
import slabwright.work.handover.OwnerTimes;

/** When smoke detectors are off because dust is raised, as the client is told it. */
record DetectorsOff(PacketContents job, SheetContext context) {
  /** Nothing without days, or where no dust is raised. */
  Optional<String> said() {
    List<TimeSpan> off = OwnerTimes.of(job.work()).detectors();
    boolean dated = job.work().dated();
    return off.isEmpty()
        ? Optional.empty()
        : Optional.of(
            context.say(
                "sheets.detectors-off.days",
                context.times().until(off.get(0).start(), dated),
                context.times().from(off.get(off.size() - 1).end(), dated)));
  }
}
