package slabwright.work;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;
import slabwright.work.step.StepKind;

/**
 * Which doorways lead from floor area to floor area, and what that means for the order of coats: a
 * floor that others have as their only way in is coated last.
 */
public record SharedDoors(Site site) {

  /** The floor area behind a doorway, as either side says it. */
  public Optional<String> behind(FloorArea area, Doorway door) {
    Optional<String> own = door.passage().leadsTo().map(Doorway.LeadsTo::area);
    return own.or(
        () ->
            site.areas().stream()
                .filter(o -> o.doorways().stream().anyMatch(d -> leads(d, area, door)))
                .map(FloorArea::id)
                .findFirst());
  }

  private static boolean leads(Doorway from, FloorArea area, Doorway door) {
    return from.passage()
        .leadsTo()
        .filter(t -> t.area().equals(area.id()) && t.doorway().equals(door.id()))
        .isPresent();
  }

  /** Doorways of which nobody said where they lead, on a site of several floors. */
  List<DayCheck> unsaid() {
    List<DayCheck> all = new ArrayList<>();
    if (site.areas().size() > 1) {
      for (FloorArea a : site.areas()) {
        for (Doorway d : a.doorways()) {
          if (behind(a, d).isEmpty() && !d.passage().sealed()) {
            all.add(
                new DayCheck(
                    a.id(), "", Message.of("work.shared-doors.unsaid", d.name(), a.name())));
          }
        }
      }
    }
    return all;
  }

  /** Doorways that the plan rests on being sealed; the crew has to know, each side once. */
  List<DayCheck> sealed() {
    List<DayCheck> all = new ArrayList<>();
    for (FloorArea a : site.areas()) {
      for (Doorway d : a.doorways()) {
        if (d.passage().sealed()) {
          Message what =
              behind(a, d)
                  .flatMap(site::area)
                  .map(o -> Message.of("work.shared-doors.sealed", d.name(), a.name(), o.name()))
                  .orElse(Message.of("work.shared-doors.sealed-alone", d.name(), a.name()));
          all.add(new DayCheck(a.id(), "", what));
        }
      }
    }
    return all;
  }

  /** The only floor area through which this one's ways in lead, if it is one. */
  private Optional<String> through(FloorArea area) {
    List<Doorway> ways = area.doorways().stream().filter(Doorway::wayIn).toList();
    Set<Optional<String>> behind = new HashSet<>();
    ways.forEach(d -> behind.add(behind(area, d)));
    return behind.size() == 1 ? behind.iterator().next() : Optional.empty();
  }

  /** Whether a floor is reached, at the last, only through floors that this one is a way to. */
  private boolean isCircle(FloorArea area) {
    Set<String> seen = new HashSet<>();
    Optional<FloorArea> at = Optional.of(area);
    while (at.isPresent()) {
      if (!seen.add(at.get().id())) {
        return true;
      }
      at = through(at.get()).flatMap(site::area);
    }
    return false;
  }

  /** Floor areas that have this one as their only way in. */
  private List<FloorArea> reachedThrough(FloorArea area) {
    return site.areas().stream()
        .filter(o -> !o.id().equals(area.id()) && !isCircle(o))
        .filter(o -> through(o).filter(area.id()::equals).isPresent())
        .toList();
  }

  /** Which floors are coated last for others, and where that can't be. */
  List<DayCheck> order(List<HeldStep> held) {
    List<DayCheck> all = new ArrayList<>();
    for (FloorArea a : site.areas()) {
      for (FloorArea o : reachedThrough(a)) {
        boolean waits = held.stream().anyMatch(h -> h.area().equals(o.id()));
        Message what =
            waits
                ? Message.of("work.shared-doors.held-behind", a.name(), o.name())
                : Message.of("work.shared-doors.last", a.name(), o.name());
        all.add(new DayCheck(a.id(), "", what));
      }
      if (isCircle(a)) {
        all.add(new DayCheck(a.id(), "", Message.of("work.shared-doors.circle", a.name())));
      }
    }
    return all;
  }

  /**
   * The same steps, a floor that is a way in cleaned and coated after all those behind it: what was
   * cleaned days before would be walked dirty again.
   */
  List<WorkStep> ordered(List<WorkStep> steps) {
    List<WorkStep> all = new ArrayList<>();
    Set<String> done = new HashSet<>();
    site.areas().forEach(a -> add(a, steps, done, all));
    return all;
  }

  private void add(FloorArea area, List<WorkStep> steps, Set<String> done, List<WorkStep> all) {
    if (!done.add(area.id())) {
      return;
    }
    List<FloorArea> behind = reachedThrough(area);
    behind.forEach(b -> add(b, steps, done, all));
    List<StepWait> last =
        behind.stream().flatMap(b -> last(b, steps).stream()).map(StepWait::straightAfter).toList();
    boolean first = true;
    for (WorkStep s : steps) {
      if (s.type().isOn(area.id())) {
        StepKind kind = s.type().kind();
        boolean late = kind == StepKind.CLEAN || kind == StepKind.COAT;
        all.add(late && first ? after(s, last) : s);
        first &= !late;
      }
    }
  }

  private static WorkStep after(WorkStep step, List<StepWait> more) {
    List<StepWait> waits = new ArrayList<>(step.waits());
    waits.addAll(more);
    return step.in(step.air(), waits);
  }

  private static List<String> last(FloorArea area, List<WorkStep> steps) {
    List<WorkStep> here = steps.stream().filter(s -> s.type().isOn(area.id())).toList();
    Set<String> followed = new HashSet<>();
    here.forEach(s -> s.waits().forEach(w -> followed.add(w.after())));
    return here.stream().map(WorkStep::id).filter(id -> !followed.contains(id)).toList();
  }
}
