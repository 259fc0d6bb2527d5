package slabwright.sheets.packet.crew;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.sheets.packet.MeterLines;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.SealedDoorways;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AirPlan;
import slabwright.work.MeterWatch;
import slabwright.work.SilicaShift;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ExposureLimit;
import slabwright.work.air.LimitComparison;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;
import slabwright.work.step.ToolKind;

/**
 * The five cautions of a day, in the order of what kills first, and when to stop: fire, air, lungs,
 * what was in the old floor, electricity, hands and eyes, slips. The usual ones (common practice);
 * data sheets and local rules come first.
 */
final class CrewCautions {
  private static final int FIVE = 5;

  private final PacketContents job;
  private final Words words;
  private final LocalDate on;
  private final List<ScheduledStep> steps;
  private final Set<StepKind> kinds = EnumSet.noneOf(StepKind.class);
  private final boolean vapour;
  private final boolean closed;

  CrewCautions(PacketContents job, CrewDay day) {
    this.job = job;
    this.words = job.words();
    this.on = day.on();
    this.steps = day.steps();
    steps.forEach(s -> kinds.add(s.task().type().kind()));
    this.vapour =
        steps.stream()
            .map(s -> s.task().type())
            .anyMatch(t -> MeterWatch.isAskedFor(job.work(), t));
    this.closed = !day.closed().isEmpty();
  }

  /** Five sentences. */
  List<String> five() {
    List<String> all = new ArrayList<>();
    if (vapour || closed) {
      all.add(words.say("sheets.crew-cautions.flame"));
      all.add(words.say("sheets.crew-cautions.air"));
      all.add(protection());
    }
    if (kinds.contains(StepKind.TAKE_OFF_RESIDUE)) {
      all.add(words.say("sheets.crew-cautions.old-material"));
    }
    if (kinds.stream().anyMatch(StepKind::grindsConcrete)) {
      all.add(silica());
    }
    if (steps.stream().anyMatch(s -> !s.task().type().tools().isEmpty())) {
      all.add(words.say("sheets.crew-cautions.cords"));
    }
    if (uses(ToolKind.HAND_GRINDER)) {
      all.add(words.say("sheets.crew-cautions.hand-grinder"));
    }
    if (uses(ToolKind.FLOOR_GRINDER)) {
      all.add(words.say("sheets.crew-cautions.floor-grinder"));
    }
    if (lays()) {
      all.add(words.say("sheets.crew-cautions.rags"));
      all.add(words.say("sheets.crew-cautions.skin"));
    }
    all.add(words.say("sheets.crew-cautions.slip"));
    all.add(words.say("sheets.crew-cautions.cords-dry"));
    all.add(words.say("sheets.crew-cautions.knees"));
    all.add(words.say("sheets.crew-cautions.exit"));
    all.add(words.say("sheets.crew-cautions.lifting"));
    return all.stream().distinct().limit(FIVE).toList();
  }

  /** With who wears a respirator for dust this day, 29 CFR 1926.1153(c)(3). */
  private String silica() {
    if (!uses(ToolKind.HAND_GRINDER)) {
      return words.say("sheets.crew-cautions.silica");
    }
    return job.work().days().maybe().stream()
        .flatMap(d -> SilicaShift.of(job.work(), d).stream())
        .filter(s -> s.day().equals(on) && s.respirator().isPresent())
        .map(s -> PersonRota.letter(s.person()))
        .reduce((a, b) -> words.say("sheets.crew-cautions.and", a, b))
        .map(who -> words.say("sheets.crew-cautions.silica-worn", who))
        .orElseGet(() -> words.say("sheets.crew-cautions.silica-by-hand"));
  }

  private boolean uses(ToolKind tool) {
    return steps.stream().anyMatch(s -> s.task().type().tools().contains(tool));
  }

  private boolean lays() {
    return kinds.contains(StepKind.COAT)
        || kinds.contains(StepKind.MIST_COAT)
        || kinds.contains(StepKind.SAMPLE_PANEL)
        || kinds.contains(StepKind.FILL_GAPS);
  }

  private String protection() {
    return steps.stream()
        .map(s -> s.task().air().protection())
        .filter(p -> !p.isEmpty())
        .findFirst()
        .map(p -> words.say("sheets.crew-cautions.protection", p))
        .orElseGet(() -> words.say("sheets.crew-cautions.no-protection"));
  }

  /** When to stop at once. */
  List<String> stops() {
    List<String> all = new ArrayList<>();
    if (vapour || closed) {
      List<String> meter = new MeterLines(job).of(steps);
      all.add(words.say("sheets.crew-cautions.stop-vapour"));
      all.addAll(meter);
      if (meter.isEmpty()) {
        entry().ifPresent(all::add);
      }
    }
    if (kinds.stream().anyMatch(StepKind::grindsConcrete)) {
      all.add(words.say("sheets.crew-cautions.stop-grinding"));
    }
    if (kinds.contains(StepKind.COAT)) {
      all.add(
          job.site().units() == UnitSystem.FEET_INCHES
              ? words.say("sheets.crew-cautions.stop-dew-feet")
              : words.say("sheets.crew-cautions.stop-dew-meters"));
    }
    if (vapour || closed || lays()) {
      // on every page of the day, as whoever goes in holds one of them
      new SealedDoorways(job).said().map(words::say).ifPresent(all::add);
    }
    if (kinds.contains(StepKind.LAY_STENCIL) || kinds.contains(StepKind.TACK_TEST)) {
      all.add(words.say("sheets.crew-cautions.stop-film"));
    }
    if (all.isEmpty()) {
      all.add(words.say("sheets.crew-cautions.stop-anything"));
    }
    return all;
  }

  /** The reading under which people without breathing gear may go in: the lowest short limit. */
  private Optional<String> entry() {
    List<LimitComparison> limits =
        steps.stream()
            .map(s -> s.task().type().areaId())
            .distinct()
            .flatMap(id -> job.work().area(id).stream())
            .flatMap(a -> a.air().maybe().flatMap(AirPlan::screening).stream())
            .map(AirScreening::closed)
            .flatMap(f -> f.limits().stream())
            .toList();
    return lowest(limits, ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES)
        .or(() -> lowest(limits, ExposureLimit.AveragingPeriod.EIGHT_HOURS))
        .map(
            l ->
                words.say(
                    "sheets.crew-cautions.entry",
                    QuantityFormat.number(l.limit().share() * 1e6, 0),
                    l.solvent().said()));
  }

  private static Optional<LimitComparison> lowest(
      List<LimitComparison> limits, ExposureLimit.AveragingPeriod span) {
    return limits.stream()
        .filter(l -> l.limit().span() == span)
        .min(java.util.Comparator.comparingDouble(l -> l.limit().share()));
  }

  /** What has to be read and written down. */
  List<String> readings() {
    List<String> all =
        new ArrayList<>(
            List.of(
                words.say("sheets.crew-cautions.read-slab"),
                words.say("sheets.crew-cautions.read-air"),
                words.say("sheets.crew-cautions.read-dew-point")));
    if (vapour || closed) {
      all.add(words.say("sheets.crew-cautions.read-meter"));
    }
    all.add(words.say("sheets.crew-cautions.read-who"));
    return all;
  }
}
