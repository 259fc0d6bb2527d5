package slabwright.sheets.packet.crew;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.TimeFormat;
import slabwright.work.AreaWorkPlan;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.KeepOut;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.handover.BuyList;
import slabwright.work.step.StepKind;

/**
 * What has to be known for a sample panel: its dyes, where it may be, and when the client signs.
 *
 * @param timed whether clock times hold; not where the job can't start
 */
record CrewSample(PacketContents job, TimeFormat times, boolean timed) {

  /** A line each; what is told before a break is not told again after it. */
  List<String> told(CrewDay.Part part) {
    List<String> lines = new ArrayList<>();
    if (part.before().isEmpty()) {
      String dyes = dyes(part.step().task().type().areaId());
      if (!dyes.isEmpty()) {
        lines.add(job.words().say("sheets.crew-sample.dyes", dyes));
        lines.add(job.words().say("sheets.crew-sample.patches"));
      }
      lines.add(job.words().say("sheets.crew-sample.place"));
    }
    if (part.after().isEmpty() && timed) {
      lines.add(job.words().say("sheets.crew-sample.signed", signed(part.step())));
    }
    return lines;
  }

  /** Who began late ends late: what follows the panel is told by its clock time alone. */
  Optional<String> dries(CrewDay.Work work) {
    return keptOut(work)
        .map(d -> job.words().say("sheets.crew-step.panel-dries", times.duration(d)));
  }

  /** How long everybody is out once the panel is laid; empty before a break in it. */
  private Optional<Duration> keptOut(CrewDay.Work work) {
    return work.last()
        .step()
        .task()
        .keepOut()
        .filter(k -> work.last().after().isEmpty())
        .map(KeepOut::after);
  }

  /** Whether a wait stands under a row already, as the time that everybody is out. */
  boolean tells(CrewDay.Work work, Duration wait) {
    return work.last().step().task().type().kind() == StepKind.SAMPLE_PANEL
        && keptOut(work).filter(wait::equals).isPresent();
  }

  /** As they are bought: a line for each colour. */
  private String dyes(String areaId) {
    Set<String> dyes =
        job.work().area(areaId).map(AreaWorkPlan::coats).orElse(List.of()).stream()
            .map(CoatPlan::product)
            .filter(p -> p.is(ProductKind.BASE_DYE) || p.is(ProductKind.INLAY_DYE))
            .map(Product::id)
            .collect(Collectors.toSet());
    return BuyList.of(job.work()).stream()
        .filter(b -> dyes.contains(b.product()))
        .map(b -> job.words().line(b.name()))
        .distinct()
        .collect(Collectors.joining("; "));
  }

  /** The hour that the client is told. */
  private String signed(ScheduledStep step) {
    return times.from(KeepOutPeriod.until(step).orElseGet(step::end), job.work().dated());
  }
}
