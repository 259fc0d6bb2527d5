package slabwright.sheets.packet;

import java.util.List;
import java.util.stream.Collectors;
import slabwright.sheets.page.TimeFormat;
import slabwright.work.VapourLeft;
import slabwright.work.air.MeterRule;
import slabwright.work.days.PersonRota;

/** What is said of vapour that still counts when the crew goes home: to the crew, at the door. */
public record LeftVapour(PacketContents job, TimeFormat times) {
  /** Where a name is written in. */
  private static final String NAME = "______________________";

  /** Letter of who stays, or of who stays if nobody takes over; empty where nobody read it. */
  public String who(VapourLeft left) {
    return left.reader().stream().mapToObj(PersonRota::letter).findFirst().orElse("");
  }

  /** The crew's row. */
  public String order(VapourLeft left) {
    String areas = String.join(", ", left.areas());
    return left.present()
        ? job.words().say("sheets.left-vapour.stay", moment(left), areas)
        : job.words().say("sheets.left-vapour.hand-over", areas, moment(left));
  }

  /** What stands under it: who takes over, and who stays where nobody does. */
  public List<String> details(VapourLeft left) {
    if (left.present()) {
      return List.of();
    }
    String fan = left.fan() ? job.words().say("sheets.left-vapour.fan") : "";
    return List.of(
        job.words().say("sheets.left-vapour.takes-over", NAME, MeterRule.USUAL_MINUTES),
        (stays(left) + " " + fan).strip());
  }

  /** Who stays where no name is written in. */
  public String stays(VapourLeft left) {
    return left.reader().isPresent()
        ? job.words()
            .say("sheets.left-vapour.stays", new MeterLines(job).named(left.reader().getAsInt()))
        : job.words().say("sheets.left-vapour.one-stays");
  }

  /** For all days on which somebody takes over: when, and which floors, once where the same. */
  public String when() {
    List<VapourLeft> left = handedOver();
    boolean same = left.stream().map(VapourLeft::areas).distinct().count() == 1;
    String days =
        left.stream()
            .map(l -> same ? span(l) : on(span(l), l.areas()))
            .collect(Collectors.joining("; "));
    return same ? on(days, left.get(0).areas()) : days;
  }

  private String on(String when, List<String> areas) {
    return job.words().say("sheets.left-vapour.on", when, String.join(", ", areas));
  }

  private String span(VapourLeft left) {
    return job.words()
        .say("sheets.left-vapour.when", times.from(left.from(), job.work().dated()), moment(left));
  }

  /** The days on which nobody of the crew is there any more. */
  public List<VapourLeft> handedOver() {
    return VapourLeft.of(job.work()).stream().filter(l -> !l.present()).toList();
  }

  private String moment(VapourLeft left) {
    return left.until().toLocalDate().equals(left.from().toLocalDate())
        ? times.hourOfAnyDay(left.until())
        : times.from(left.until(), job.work().dated());
  }
}
