package slabwright.work.stop;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.site.AreaDetails;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.job.Stop;

/** Which questions a floor area asks before work on it starts. */
public final class StopFinder {
  /**
   * Flooring and mastic laid no later than 1980 are taken to hold asbestos until a laboratory says
   * otherwise, 29 CFR 1926.1101(b) and (k); a building of unknown age counts as older.
   */
  static final int FIRST_YEAR_WITHOUT = 1981;

  private StopFinder() {}

  /**
   * The questions of a floor area in the order of {@link Stop.Kind}, with how each stands.
   *
   * @param fireCode whether the fire code's chapter on flammable finishes applies
   */
  public static List<JobStop> of(FloorArea area, boolean fireCode) {
    Set<Stop.Kind> asked = EnumSet.noneOf(Stop.Kind.class);
    area.details().stops().forEach(s -> asked.add(s.kind()));
    if (area.marks().stream().anyMatch(m -> m.kind() instanceof MarkKind.Residue)) {
      asked.add(Stop.Kind.OWNERS_SURVEY);
      if (area.details().built().year().orElse(0) < FIRST_YEAR_WITHOUT) {
        asked.add(Stop.Kind.ASBESTOS);
      }
    }
    if (area.marks().stream().anyMatch(StopFinder::mayHoldLead)) {
      asked.add(Stop.Kind.LEAD_PAINT);
    }
    if (isTensionedOrHeated(area.details().built())) {
      asked.add(Stop.Kind.SLAB_BEFORE_DRILLING);
    }
    if (fireCode) {
      asked.add(Stop.Kind.FIRE_PERMIT);
    }
    return asked.stream().map(k -> new JobStop(area.id(), area.name(), k, state(area, k))).toList();
  }

  private static boolean isTensionedOrHeated(AreaDetails.Built built) {
    return built.postTensioned().orElse(false) || built.heated().orElse(false);
  }

  private static boolean mayHoldLead(Mark mark) {
    return mark.kind() instanceof MarkKind.Residue r && r.stuff(mark.name()).mayHoldLead();
  }

  private static Stop.State state(FloorArea area, Stop.Kind kind) {
    Optional<Stop> said = area.details().stops().stream().filter(s -> s.kind() == kind).findFirst();
    return said.map(Stop::state).orElseGet(Stop.Open::new);
  }
}
