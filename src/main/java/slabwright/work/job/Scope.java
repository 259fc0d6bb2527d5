package slabwright.work.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import slabwright.site.Finish;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWork;
import slabwright.work.WorkPlan;
import slabwright.work.coat.Advice;
import slabwright.work.coat.CoatPlan;

/**
 * What the job includes, what it does not, and the advice log.
 *
 * @param included one sentence each
 * @param excluded one sentence each
 * @param advice all advice given, with whether it was declined
 */
public record Scope(List<String> included, List<String> excluded, List<Given> advice, Cost cost) {
  public Scope {
    included = List.copyOf(included);
    excluded = List.copyOf(excluded);
    advice = List.copyOf(advice);
  }

  /**
   * Advice given for a floor area.
   *
   * @param key area id, a slash, the advice's id
   * @param declined whether the client does otherwise, and signs for it
   */
  public record Given(String key, String area, Advice advice, boolean declined) {
    /** The line the client signs. */
    public String line() {
      return "Advice for %s: %s %s Declined by the client:"
          .formatted(area, advice.prefer(), advice.why());
    }
  }

  private static final List<String> NEVER =
      List.of(
          "Gas, electrical and sprinkler work, and isolating or restoring smoke detectors: the"
              + " owner's.",
          "Moisture coming from the slab, cracks that move, and settlement.",
          "Whatever is not named above.");

  /** The scope of a plan; {@code declined} holds keys of advice. */
  public static Scope of(WorkPlan plan, Set<String> declined) {
    List<String> included = new ArrayList<>();
    List<Given> advice = new ArrayList<>();
    for (AreaWork area : plan.areas()) {
      included.addAll(included(area, plan.site().units()));
      for (Advice a : area.advice()) {
        String key = area.id() + "/" + a.id();
        advice.add(new Given(key, area.name(), a, declined.contains(key)));
      }
    }
    return new Scope(included, NEVER, advice, Cost.of(plan));
  }

  private static List<String> included(AreaWork area, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    area.prep().steps().forEach(s -> lines.add(area.name() + ": " + s.name() + "."));
    for (CoatPlan c : area.coats()) {
      String where =
          c.job().target() == Finish.Target.INLAY
              ? "in the inlay"
              : "on " + Quantity.area(c.job().mm2(), units);
      String coats = c.job().coats() == 1 ? "1 coat" : c.job().coats() + " coats";
      lines.add("%s: %s, %s %s.".formatted(area.name(), c.product().label(), coats, where));
    }
    return lines;
  }

  /** Advice declined, to be signed line by line. */
  public List<Given> declined() {
    return advice.stream().filter(Given::declined).toList();
  }
}
