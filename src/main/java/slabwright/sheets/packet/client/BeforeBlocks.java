package slabwright.sheets.packet.client;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
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
import slabwright.work.air.IgnitionCheck;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;

/**
 * What the owner sees to before the crew comes and on which days, with the day on which the sample
 * panel is signed: common practice, no source.
 */
final class BeforeBlocks {
  /** For less nobody lights a heater. */
  private static final int NIGHT_HOURS = 8;

  private final PacketContents job;
  private final SheetContext context;
  private final Optional<DayPlan> days;
  private final List<VapourLeft> left;

  BeforeBlocks(PacketContents job, SheetContext context) {
    this.job = job;
    this.context = context;
    this.days = job.work().days().maybe().filter(d -> !d.steps().isEmpty());
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
        days.map(d -> by(d.steps().get(0).start()))
            .orElse(context.say("sheets.before-blocks.before-the-first-day"));
    List<String> ready = new ArrayList<>();
    ready.add(context.say("sheets.before-blocks.cleared", areas()));
    ready.add(context.say("sheets.before-blocks.power"));
    ready.add(context.say("sheets.before-blocks.key"));
    wanted.put(first, ready);
    if (any(BeforeBlocks::raisesDust)) {
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
    return job.work().days().maybe().stream()
        .flatMap(d -> d.steps().stream())
        .filter(BeforeBlocks::isSample)
        .map(s -> KeepOutPeriod.until(s).orElseGet(s::end))
        .max(Comparator.naturalOrder())
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

  private static boolean raisesDust(ScheduledStep s) {
    return s.task().type().air() instanceof AirEffect.Dust;
  }

  private static boolean isSample(ScheduledStep s) {
    return s.task().type().kind() == StepKind.SAMPLE_PANEL;
  }

  private String dust() {
    return days.map(
            d -> {
              List<ScheduledStep> dusty =
                  d.steps().stream().filter(BeforeBlocks::raisesDust).toList();
              LocalDateTime end =
                  dusty.stream()
                      .map(ScheduledStep::end)
                      .max(Comparator.naturalOrder())
                      .orElseThrow();
              return fromUntil(dusty.get(0).start(), end);
            })
        .orElse(context.say("sheets.before-blocks.while-we-grind"));
  }

  private String solvent() {
    List<TimeSpan> off = heatingOff();
    return off.isEmpty()
        ? context.say("sheets.before-blocks.while-solvent-is-out")
        : off.stream().map(this::span).collect(Collectors.joining("; "));
  }

  /** A day and its hours where it is on one, else from when to when; with when we leave sooner. */
  private String span(TimeSpan t) {
    boolean day =
        QuarterHour.down(t.start()).toLocalDate().equals(QuarterHour.up(t.end()).toLocalDate());
    String hours =
        day
            ? context.say(
                "sheets.before-blocks.day-hours",
                context.times().until(t.start(), job.work().dated()),
                context.times().hourOfAnyDay(t.end()))
            : fromUntil(t.start(), t.end());
    return left.stream()
        .map(VapourLeft::from)
        .filter(l -> t.start().isBefore(l) && l.isBefore(t.end()))
        .map(l -> context.times().hourOfAnyDay(l))
        .reduce((a, b) -> a + ", " + b)
        .map(l -> context.say("sheets.before-blocks.we-leave", hours, l))
        .orElse(hours);
  }

  /**
   * While others are kept off for solvent, and the hours that heating stays off after it is laid;
   * one time where less than a night lies between two.
   */
  private List<TimeSpan> heatingOff() {
    List<TimeSpan> all = new ArrayList<>();
    days.map(DayPlan::steps).orElse(List.of()).stream()
        .filter(s -> s.task().keepOut().isPresent())
        .sorted(Comparator.comparing(ScheduledStep::start))
        .forEach(
            s -> {
              LocalDateTime cold = s.end().plusHours(IgnitionCheck.HVAC_OFF_HOURS);
              LocalDateTime clear = KeepOutPeriod.until(s).orElse(cold);
              add(all, new TimeSpan(s.start(), clear.isAfter(cold) ? clear : cold));
            });
    return all;
  }

  private static void add(List<TimeSpan> all, TimeSpan next) {
    TimeSpan last = all.isEmpty() ? next : all.get(all.size() - 1);
    if (all.isEmpty() || last.end().plusHours(NIGHT_HOURS).isBefore(next.start())) {
      all.add(next);
    } else if (next.end().isAfter(last.end())) {
      all.set(all.size() - 1, new TimeSpan(last.start(), next.end()));
    }
  }

  private String fromUntil(LocalDateTime from, LocalDateTime to) {
    boolean dated = job.work().dated();
    return context.say(
        "sheets.before-blocks.from-until",
        context.times().until(from, dated),
        context.times().from(to, dated));
  }
}
