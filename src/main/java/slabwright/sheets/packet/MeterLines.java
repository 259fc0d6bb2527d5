package slabwright.sheets.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.work.AirPlan;
import slabwright.work.MeterWatch;
import slabwright.work.WorkPlan;
import slabwright.work.air.BreathingProtection;
import slabwright.work.air.MeterRule;
import slabwright.work.days.DayPlan;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;

/** Who reads the gas meter on a day, how often, and at which numbers people are out. */
public record MeterLines(PacketContents job) {

  /** Both, for the steps of a day that set vapour free. */
  public List<String> of(List<ScheduledStep> steps) {
    List<String> lines = new ArrayList<>(readers(steps));
    lines.addAll(numbers(vapour(steps)));
    return lines;
  }

  /** The days; of a job that can't start only the order of its steps. */
  public static Optional<DayPlan> dayPlan(WorkPlan plan) {
    return plan.outlook().canStart() ? plan.days().maybe() : plan.outlook().order().maybe();
  }

  private List<ScheduledStep> vapour(List<ScheduledStep> steps) {
    return steps.stream().filter(s -> MeterWatch.isAskedFor(job.work(), s.task().type())).toList();
  }

  /**
   * Who reads it during the steps that set vapour free, how often, and far from the way in through
   * a hose (common practice, no source); empty without such.
   */
  public List<String> readers(List<ScheduledStep> steps) {
    Optional<DayPlan> plan = dayPlan(job.work());
    List<ScheduledStep> vapour = vapour(steps);
    Map<MeterWatch, List<ScheduledStep>> watches = new LinkedHashMap<>();
    plan.ifPresent(
        p ->
            vapour.forEach(
                s -> watches.computeIfAbsent(MeterWatch.of(p, s), w -> new ArrayList<>()).add(s)));
    List<String> lines = new ArrayList<>();
    watches.forEach(
        (watch, of) -> {
          Message who = who(watch, minutes(of));
          lines.add(
              watches.size() == 1
                  ? job.words().say(who)
                  : job.words().say("sheets.meter-lines.during", names(of), who));
        });
    if (!lines.isEmpty()) {
      lines.add(job.words().say("sheets.meter-lines.far"));
    }
    return lines;
  }

  private Message who(MeterWatch watch, int minutes) {
    String person = watch.person().stream().mapToObj(this::named).findFirst().orElse("");
    return switch (watch.standing()) {
      case FREE -> Message.of("sheets.meter-lines.free", person, minutes);
      case FROM_OTHER_WORK -> Message.of("sheets.meter-lines.from-other-work", person, minutes);
      case NOBODY -> Message.of("sheets.meter-lines.nobody", minutes);
    };
  }

  /** Letter and name of a person, by number from 0. */
  public String named(int person) {
    String letter = PersonRota.letter(person);
    List<String> names = job.site().job().crew().persons().stream().map(p -> p.name()).toList();
    return person < names.size() && !names.get(person).isBlank()
        ? job.words().say("sheets.crew-day.person", letter, names.get(person))
        : letter;
  }

  private String names(List<ScheduledStep> steps) {
    Set<String> names = new LinkedHashSet<>();
    steps.forEach(s -> names.add(job.words().line(s.task().name())));
    return String.join("; ", names);
  }

  /** Whether breathing protection for vapour is named for anybody of the crew. */
  public boolean isMaskNamed() {
    return job.site().job().crew().persons().stream()
        .anyMatch(p -> BreathingProtection.named(p.breathing()).isPresent());
  }

  /** What the meter has to tell on the floors of steps, each once. */
  public List<MeterRule> rules(List<ScheduledStep> steps) {
    return steps.stream()
        .map(s -> s.task().type().areaId())
        .distinct()
        .flatMap(id -> job.work().area(id).stream())
        .flatMap(a -> a.air().maybe().map(AirPlan::ignition).stream())
        .flatMap(i -> i.meter().stream())
        .distinct()
        .toList();
  }

  private int minutes(List<ScheduledStep> steps) {
    return rules(steps).stream().mapToInt(MeterRule::minutes).min().orElse(MeterRule.USUAL_MINUTES);
  }

  private List<String> numbers(List<ScheduledStep> steps) {
    return rules(steps).stream()
        .map(
            r -> {
              String entry = QuantityFormat.number(r.entryPpm(), 0);
              return isMaskNamed()
                  ? job.words().say("sheets.meter-lines.stop", entry, r.solvent())
                  : job.words().say("sheets.meter-lines.stop-without-mask", entry, r.solvent());
            })
        .distinct()
        .toList();
  }
}
