package slabwright.sheets.packet.crew;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import slabwright.sheets.packet.MeterLines;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.SealedDoorways;
import slabwright.site.PieceKind;
import slabwright.units.LetterNumbering;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.MeterWatch;
import slabwright.work.SilicaShift;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ExposureLimit;
import slabwright.work.air.LimitComparison;
import slabwright.work.air.MeterRule;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/**
 * The cautions of a day, in the order of what kills first, and when to stop: fire, air, lungs, what
 * was in the old floor, electricity, hands and eyes, slips. Five, or more where a day has more that
 * maims or kills: what is for fire, lungs, eyes, skin and knees never gives way. The usual ones
 * (common practice); data sheets and local rules come first.
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
  private final List<String> shut;

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
    this.shut = day.closed().stream().map(c -> c.air().area()).toList();
  }

  /** Five sentences, or as many more as none of them may be left out. */
  List<String> all() {
    List<String> due = due();
    Stream<String> others =
        others().stream().filter(o -> !due.contains(o)).limit(Math.max(0, FIVE - due.size()));
    return Stream.concat(due.stream(), others).toList();
  }

  /** What the day's work makes due: never left out. */
  private List<String> due() {
    List<String> all = new ArrayList<>();
    if (vapour || closed) {
      all.add(words.say("sheets.crew-cautions.flame"));
      all.addAll(air());
      all.add(protection());
    }
    if (kinds.contains(StepKind.TAKE_OFF_RESIDUE)) {
      all.add(words.say("sheets.crew-cautions.old-material"));
    }
    if (kinds.stream().anyMatch(StepKind::grindsConcrete)) {
      all.add(silica());
    }
    all.addAll(openEdges());
    if (steps.stream().anyMatch(s -> !s.task().type().tools().isEmpty())) {
      all.add(
          vapour && uses(ToolKind.COMPRESSOR)
              ? words.say("sheets.crew-cautions.cords-compressor")
              : words.say("sheets.crew-cautions.cords"));
    }
    if (uses(ToolKind.HAND_GRINDER)) {
      all.add(words.say("sheets.crew-cautions.hand-grinder"));
    }
    if (uses(ToolKind.FLOOR_GRINDER)) {
      all.add(words.say("sheets.crew-cautions.floor-grinder"));
    }
    if (lays()) {
      all.add(words.say("sheets.crew-cautions.rags"));
      all.add(words.say("sheets.crew-cautions.skin-and-knees"));
    } else if (kneels()) {
      all.add(words.say("sheets.crew-cautions.knees"));
    }
    return all.stream().distinct().toList();
  }

  private List<String> others() {
    return List.of(
        words.say("sheets.crew-cautions.slip"),
        words.say("sheets.crew-cautions.cords-dry"),
        words.say("sheets.crew-cautions.exit"),
        words.say("sheets.crew-cautions.lifting"));
  }

  /** Where one may fall from a floor of the day; how deep is not on a plan. Common practice. */
  private List<String> openEdges() {
    List<String> all = new ArrayList<>();
    steps.stream()
        .map(s -> s.task().type().areaId())
        .distinct()
        .flatMap(id -> job.site().area(id).stream())
        .forEach(
            area -> {
              String edges =
                  IntStream.range(0, area.outline().size())
                      .filter(i -> area.outline().get(i).kind() == PieceKind.OPEN_EDGE)
                      .mapToObj(LetterNumbering::of)
                      .collect(Collectors.joining(", "));
              if (!edges.isEmpty()) {
                all.add(words.say("sheets.crew-cautions.open-edge", edges, area.name()));
              }
            });
    return all;
  }

  /** How the air goes on each floor with vapour: only what stands on the plan of it. */
  private List<String> air() {
    List<String> all = new ArrayList<>();
    for (AreaWorkPlan area : floors()) {
      if (area.floor().isOutdoors()) {
        all.add(words.say("sheets.crew-cautions.air-outdoors"));
      } else {
        all.add(
            area.air()
                .maybe()
                .flatMap(AirPlan::path)
                .map(
                    p ->
                        words.say(
                            "sheets.crew-cautions.air-by", p.inlet().name(), p.outlet().name()))
                .orElseGet(() -> words.say("sheets.crew-cautions.air")));
      }
    }
    return all;
  }

  /** Where vapour is set free this day, or where people stay out. */
  private List<AreaWorkPlan> floors() {
    Stream<String> free =
        steps.stream()
            .map(s -> s.task().type())
            .filter(t -> MeterWatch.isAskedFor(job.work(), t))
            .map(StepType::areaId);
    return Stream.concat(free, shut.stream())
        .distinct()
        .flatMap(id -> job.work().area(id).stream())
        .toList();
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

  private boolean kneels() {
    return uses(ToolKind.HAND_GRINDER)
        || kinds.contains(StepKind.MASK_WALLS)
        || kinds.contains(StepKind.TACK_TEST)
        || kinds.contains(StepKind.LAY_STENCIL)
        || kinds.contains(StepKind.PULL_UP_STENCIL);
  }

  /** What is worn for vapour; where nobody named any, from which reading nobody goes in. */
  private String protection() {
    return steps.stream()
        .map(s -> s.task().air().protection())
        .filter(p -> !p.isEmpty())
        .findFirst()
        .map(p -> words.say("sheets.crew-cautions.protection", p))
        .orElseGet(this::withoutProtection);
  }

  private String withoutProtection() {
    if (new MeterLines(job).isMaskNamed()) {
      return words.say("sheets.crew-cautions.no-protection");
    }
    return strictest()
        .map(
            r ->
                words.say(
                    "sheets.crew-cautions.no-mask-from",
                    QuantityFormat.number(r.entryPpm(), 0),
                    r.solvent()))
        .orElseGet(() -> words.say("sheets.crew-cautions.no-mask"));
  }

  /** At which reading everybody is out, in both units that a meter shows. */
  private String leave() {
    return new MeterLines(job)
        .rules(steps).stream()
            .map(MeterRule::outPpm)
            .min(Double::compare)
            .map(ppm -> QuantityFormat.number(ppm, 0))
            .map(ppm -> words.say("sheets.crew-cautions.stop-vapour-ppm", ppm))
            .orElseGet(() -> words.say("sheets.crew-cautions.stop-vapour"));
  }

  /** When film is let be: it lifts dye, or sparks where it is pulled over wet solvent. */
  private List<String> film() {
    List<String> all = new ArrayList<>();
    Optional<MeterRule> wet =
        vapour && kinds.contains(StepKind.PULL_UP_STENCIL) ? strictest() : Optional.empty();
    wet.map(r -> QuantityFormat.number(r.entryPpm(), 0))
        .map(ppm -> words.say("sheets.crew-cautions.stop-film-static", ppm))
        .ifPresent(all::add);
    boolean tried = kinds.contains(StepKind.TACK_TEST) || kinds.contains(StepKind.LAY_STENCIL);
    if (wet.isEmpty() && tried) {
      all.add(words.say("sheets.crew-cautions.stop-film"));
    }
    return all;
  }

  private Optional<MeterRule> strictest() {
    return new MeterLines(job)
        .rules(steps).stream().min(Comparator.comparingDouble(MeterRule::entryPpm));
  }

  /** When to stop at once. */
  List<String> stops() {
    List<String> all = new ArrayList<>();
    if (vapour || closed) {
      List<String> meter = new MeterLines(job).of(steps);
      all.add(leave());
      all.addAll(meter);
      if (meter.isEmpty()) {
        entry().ifPresent(all::add);
      }
      all.add(words.say("sheets.crew-cautions.meter-page"));
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
    all.addAll(film());
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
        .min(Comparator.comparingDouble(l -> l.limit().share()));
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
