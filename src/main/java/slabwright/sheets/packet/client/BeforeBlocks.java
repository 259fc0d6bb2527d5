package slabwright.sheets.packet.client;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import slabwright.sheets.packet.LeftVapour;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.SheetContext;
import slabwright.units.QuarterHour;
import slabwright.work.AreaWorkPlan;
import slabwright.work.VapourLeft;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.handover.OwnerTimes;
import slabwright.work.step.StepKind;

/**
 * What the owner sees to before the crew comes and on which days, with the day on which the sample
 * panel is signed: common practice, no source.
 */
final class BeforeBlocks {
  private final PacketContents job;
  private final SheetContext context;
  private final Optional<DayPlan> days;
  private final OwnerTimes times;
  private final List<VapourLeft> left;

  BeforeBlocks(PacketContents job, SheetContext context) {
    this.job = job;
    this.context = context;
    this.days = job.work().days().maybe().filter(d -> !d.steps().isEmpty());
    this.times = OwnerTimes.of(job.work());
    this.left = new LeftVapour(job, context.times()).handedOver();
  }

  /** Nothing where no floor is worked on. */
  List<Block> blocks() {
    boolean some = job.work().tasks().maybe().filter(t -> !t.isEmpty()).isPresent();
    if (!some) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    wanted()
        .forEach(
            (when, what) ->
                lines.add(context.say("sheets.before-blocks.line", when, String.join(" ", what))));
    return List.of(new Heading(context.say("sheets.before-blocks.title")), new BulletBlock(lines));
  }

  /** What is wanted, by when. */
  private Map<String, List<String>> wanted() {
    Map<String, List<String>> wanted = new LinkedHashMap<>();
    String first =
        times
            .cleared()
            .map(this::by)
            .orElse(context.say("sheets.before-blocks.before-the-first-day"));
    List<String> ready = new ArrayList<>();
    ready.add(context.say("sheets.before-blocks.cleared", areas()));
    ready.add(context.say("sheets.before-blocks.power"));
    ready.add(
        times
            .opens()
            .map(
                t ->
                    context.say(
                        "sheets.before-blocks.key-from", context.times().hourBeforeOfAnyDay(t)))
            .orElseGet(() -> context.say("sheets.before-blocks.key")));
    wanted.put(first, ready);
    if (any(OwnerTimes::raisesDust)) {
      wanted.put(dust(), List.of(context.say("sheets.before-blocks.detectors")));
    }
    if (any(s -> s.task().keepOut().isPresent())) {
      List<String> off =
          new ArrayList<>(
              List.of(
                  context.say("sheets.before-blocks.gas"),
                  context.say("sheets.before-blocks.heating")));
      if (!left.isEmpty()) {
        off.add(context.say("sheets.before-blocks.crew-left"));
      }
      wanted.put(solvent(), off);
    }
    if (any(BeforeBlocks::isSample)) {
      wanted.put(
          sampleSigned(job, context).orElse(context.say("sheets.before-blocks.before-any-dye")),
          List.of(context.say("sheets.before-blocks.sample")));
    }
    return wanted;
  }

  /**
   * From when on the sample panel is looked at, and before the first dye: when others are no longer
   * kept off for it. Empty without days or a panel.
   */
  static Optional<String> sampleSigned(PacketContents job, SheetContext context) {
    return OwnerTimes.of(job.work())
        .signing()
        .map(t -> context.times().from(t, job.work().dated()));
  }

  private String areas() {
    return job.work().areas().stream().map(AreaWorkPlan::name).collect(Collectors.joining(", "));
  }

  private String by(LocalDateTime t) {
    return context.say("sheets.before-blocks.by", context.times().until(t, job.work().dated()));
  }

  /** The steps that are planned; in order where the job can't start. */
  private List<ScheduledStep> steps() {
    return days.or(() -> job.work().outlook().order().maybe())
        .map(DayPlan::steps)
        .orElse(List.of());
  }

  private boolean any(Predicate<ScheduledStep> which) {
    return steps().stream().anyMatch(which);
  }

  private static boolean isSample(ScheduledStep s) {
    return s.task().type().kind() == StepKind.SAMPLE_PANEL;
  }

  /**
   * From the first day to the last; nobody leaves detectors off overnight, as is said beside it.
   */
  private String dust() {
    List<TimeSpan> off = times.detectors();
    return off.isEmpty()
        ? context.say("sheets.before-blocks.while-we-grind")
        : hours(new TimeSpan(off.get(0).start(), off.get(off.size() - 1).end()));
  }

  private String solvent() {
    List<TimeSpan> off = times.flames();
    return off.isEmpty()
        ? context.say("sheets.before-blocks.while-solvent-is-out")
        : off.stream().map(this::span).collect(Collectors.joining("; "));
  }

  /** With when we leave sooner. */
  private String span(TimeSpan t) {
    String hours = hours(t);
    return left.stream()
        .map(VapourLeft::from)
        .filter(l -> t.start().isBefore(l) && l.isBefore(t.end()))
        .map(l -> context.times().hourOfAnyDay(l))
        .reduce((a, b) -> a + ", " + b)
        .map(l -> context.say("sheets.before-blocks.we-leave", hours, l))
        .orElse(hours);
  }

  /** A day and its hours where it is on one, else from when to when. */
  private String hours(TimeSpan t) {
    boolean day =
        QuarterHour.down(t.start()).toLocalDate().equals(QuarterHour.up(t.end()).toLocalDate());
    return day
        ? context.say(
            "sheets.before-blocks.day-hours",
            context.times().until(t.start(), job.work().dated()),
            context.times().hourOfAnyDay(t.end()))
        : fromUntil(t.start(), t.end());
  }

  private String fromUntil(LocalDateTime from, LocalDateTime to) {
    boolean dated = job.work().dated();
    return context.say(
        "sheets.before-blocks.from-until",
        context.times().until(from, dated),
        context.times().from(to, dated));
  }
}
