package slabwright.work.handover;

import java.util.List;
import slabwright.units.Message;
import slabwright.work.stop.JobStop;

/** What stops a job, as lines of a paper: open ones to tick, settled ones as done. */
final class StopRows {
  private StopRows() {}

  static HandoverDocument.Section section(List<JobStop> stops) {
    return new HandoverDocument.Section(
        Message.of("work.stop.before-work"), stops.stream().map(StopRows::row).toList());
  }

  private static HandoverDocument.Row row(JobStop s) {
    Message label = Message.of("work.stop.where-and-what", s.where(), s.question());
    return s.isOpen()
        ? HandoverDocument.Row.toTick(label, s.standing())
        : HandoverDocument.Row.fact(label, s.standing());
  }
}
