package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.work.air.EntryLimit;
import slabwright.work.book.Figure;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.StepAir;
import slabwright.work.days.StepWait;
import slabwright.work.days.VapourReach;
import slabwright.work.days.WetFilm;
import slabwright.work.days.WorkStep;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;

/**
 * Lets the vapour of a floor area's steps into those it shares a doorway with, unless it is sealed
 * (by both sides where both say that they lead to each other): indoors until its own entry rule
 * lets anyone in again; as long the other floors are closed too. Outdoors no air is reckoned; there
 * it counts until the coat may be recoated (common practice, no source).
 *
 * <p>The other way dust comes in: a coat is wet to it until it may be recoated, for the book has no
 * time at which it is dry to the touch (common practice, no source).
 */
final class SharedAir {
  private final AreaTakeoff floor;
  private final List<CoatPlan> coats;
  private final List<String> beside;

  SharedAir(Site site, AreaTakeoff floor, List<CoatPlan> coats) {
    this.floor = floor;
    this.coats = coats;
    this.beside =
        site.areas().stream()
            .filter(o -> leads(floor.area(), o) || leads(o, floor.area()))
            .map(FloorArea::id)
            .toList();
  }

  private static boolean leads(FloorArea from, FloorArea to) {
    return from.doorways().stream()
        .map(Doorway::passage)
        .filter(p -> !p.sealed())
        .flatMap(p -> p.leadsTo().stream())
        .map(Doorway.LeadsTo::area)
        .anyMatch(to.id()::equals);
  }

  /** The same steps with their vapour and wet coats; where it never clears the job can't start. */
  AreaEntry spread(AreaEntry dry) {
    AreaEntry entry = dry.with(dry.steps().stream().map(this::wet).toList());
    return beside.isEmpty() ? entry : vapour(entry);
  }

  private WorkStep wet(WorkStep step) {
    List<String> here = Stream.concat(Stream.of(step.type().areaId()), beside.stream()).toList();
    return recoat(step)
        .map(t -> step.in(step.air().wet(new WetFilm(here, t)), step.waits()))
        .orElse(step);
  }

  /** When what a step lays may be recoated, in the minutes of the plan; empty for no coat. */
  private Optional<Duration> recoat(WorkStep step) {
    return coats.stream()
        .filter(c -> step.type().coat().filter(n -> n.place() == c.job().place()).isPresent())
        .findFirst()
        .flatMap(c -> AreaStepPlanner.gap(c, Figure.known(Duration.ZERO)).maybe())
        .map(StepSequence.RecoatGap::opens)
        .map(StepSequence::minutes);
  }

  private AreaEntry vapour(AreaEntry entry) {
    List<WorkStep> steps = new ArrayList<>();
    List<Message> cannotStart = new ArrayList<>(entry.cannotStart());
    for (WorkStep s : entry.steps()) {
      boolean vapour = s.type().air() instanceof AirEffect.Vapour || isSolventPanel(s);
      Optional<Duration> after = clear(s, entry);
      if (vapour && after.isEmpty()) {
        cannotStart.add(Message.of("work.start.never-clear-beside", s.area(), s.name()));
      }
      StepAir air =
          s.air().reaching(new VapourReach(beside, after.orElse(Duration.ZERO), closes(s, entry)));
      steps.add(vapour ? s.in(air, s.waits()) : s);
    }
    List<ClosedAir> closed = new ArrayList<>(entry.closed());
    for (String other : beside) {
      entry.closed().forEach(c -> closed.add(c.at(other)));
    }
    return new AreaEntry(steps, entry.held(), cannotStart, closed);
  }

  /** What a sample panel sets free is in no air figure, but nothing sparks beside it till dry. */
  private boolean isSolventPanel(WorkStep step) {
    return step.type().kind() == StepKind.SAMPLE_PANEL
        && coats.stream().anyMatch(AreaStepPlanner::setsVapourFree);
  }

  /** Who stays out beside: as here, for the doorway between is open. */
  private static VapourReach.Closes closes(WorkStep step, AreaEntry entry) {
    List<ClosedAir> own = entry.closed().stream().filter(c -> c.step().equals(step.id())).toList();
    boolean nobody =
        own.stream()
            .map(ClosedAir::limit)
            .anyMatch(l -> l.isForEveryone() || l == EntryLimit.PROTECTION_FACTOR);
    if (nobody) {
      return VapourReach.Closes.EVERYONE;
    }
    return own.isEmpty() ? VapourReach.Closes.NOBODY : VapourReach.Closes.UNPROTECTED;
  }

  /** How long after the step; empty for never. */
  private Optional<Duration> clear(WorkStep step, AreaEntry entry) {
    if (floor.isOutdoors() || isSolventPanel(step)) {
      return Optional.of(dry(step, entry.steps()));
    }
    List<Optional<Duration>> closed =
        entry.closed().stream()
            .filter(c -> c.step().equals(step.id()))
            .map(ClosedAir::after)
            .toList();
    return closed.contains(Optional.<Duration>empty())
        ? Optional.empty()
        : Optional.of(longest(closed.stream().flatMap(Optional::stream).toList()));
  }

  private Duration dry(WorkStep step, List<WorkStep> steps) {
    List<Duration> all = new ArrayList<>();
    steps.stream()
        .flatMap(s -> s.waits().stream())
        .filter(w -> w.after().equals(step.id()))
        .map(StepWait::atLeast)
        .forEach(all::add);
    recoat(step).ifPresent(all::add);
    return longest(all);
  }

  private static Duration longest(List<Duration> all) {
    return all.stream().reduce(Duration.ZERO, (a, b) -> a.compareTo(b) >= 0 ? a : b);
  }
}
