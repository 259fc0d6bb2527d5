package slabwright.work.handover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.AdviceId;
import slabwright.site.Declined;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.coat.ClientAdvice;
import slabwright.work.coat.CoatPlan;

/**
 * What the job includes, what it does not, and the advice log.
 *
 * @param included one sentence each
 * @param excluded one sentence each
 * @param advice all advice given, declined or open
 */
public record Scope(
    List<Message> included, List<Message> excluded, List<GivenAdvice> advice, Cost cost) {
  public Scope {
    included = List.copyOf(included);
    excluded = List.copyOf(excluded);
    advice = List.copyOf(advice);
  }

  /**
   * Advice given for a floor area; open unless it was declined or the plan follows it.
   *
   * @param key area id, a slash, the advice's id
   * @param declined whether the client does otherwise, and signs for it
   * @param declinedBy name or initials, if known
   * @param declinedOn the day, if known
   * @param followed by what the plan already does as it says; empty when it was declined
   */
  public record GivenAdvice(
      String key,
      String area,
      ClientAdvice advice,
      boolean declined,
      Optional<String> declinedBy,
      Optional<LocalDate> declinedOn,
      Optional<Message> followed) {
    static GivenAdvice of(FloorArea area, ClientAdvice advice, Optional<Message> followed) {
      Optional<Declined> declined = area.declined(advice.id());
      return new GivenAdvice(
          area.id() + "/" + advice.id().word(),
          area.name(),
          advice,
          declined.isPresent(),
          declined.map(Declined::by).filter(n -> !n.isBlank()),
          declined.flatMap(Declined::on),
          declined.isPresent() ? Optional.empty() : followed);
    }

    /** The advice with its reason. */
    public Message words() {
      return Message.of("work.scope.advice", area, advice.prefer(), advice.why());
    }

    /** Whether somebody still has to decide on it. */
    public boolean isOpen() {
      return !declined && followed.isEmpty();
    }

    /**
     * How it stands: "open", by what it is followed, or "declined" with who and when as far as that
     * is known.
     */
    public Message status() {
      if (!declined) {
        return followed.orElse(Message.of("work.scope.open"));
      }
      if (declinedBy.isEmpty() && declinedOn.isEmpty()) {
        return Message.of("work.scope.declined");
      }
      if (declinedBy.isEmpty()) {
        return Message.of("work.scope.declined-on", declinedOn.get());
      }
      return declinedOn
          .map(d -> Message.of("work.scope.declined-by-on", declinedBy.get(), d))
          .orElse(Message.of("work.scope.declined-by", declinedBy.get()));
    }
  }

  private static final List<Message> NEVER =
      List.of(
          Message.of("work.scope.gas-electrical-and-sprinkler"),
          Message.of("work.scope.moisture-coming-from-the-slab"),
          Message.of("work.scope.whatever-is-not-named-above"));

  /** The scope of a plan. */
  public static Scope of(WorkPlan plan) {
    List<Message> included = new ArrayList<>();
    List<GivenAdvice> advice = new ArrayList<>();
    for (AreaWorkPlan area : plan.areas()) {
      included.addAll(included(area, plan.site().units()));
      area.advice()
          .forEach(
              a ->
                  advice.add(
                      GivenAdvice.of(
                          area.floor().area(), a, FollowedAdvice.by(a.id(), area, plan))));
    }
    return new Scope(included, NEVER, advice, Cost.of(plan));
  }

  private static List<Message> included(AreaWorkPlan area, UnitSystem units) {
    List<Message> lines = new ArrayList<>();
    area.prep()
        .steps()
        .forEach(s -> lines.add(Message.of("work.scope.step", area.name(), s.name())));
    for (CoatPlan c : area.coats()) {
      Message where =
          c.job().target() == Finish.Target.INLAY
              ? Message.of("work.scope.in-the-inlay")
              : Message.of("work.scope.on-area", QuantityFormat.area(c.job().mm2(), units));
      lines.add(
          Message.of("work.scope.coats", area.name(), c.product().label(), c.job().coats(), where));
    }
    return lines;
  }

  /**
   * Advice on a damp slab that the plan does not follow and nobody declined: a coat may come off.
   */
  public List<GivenAdvice> unmetMoisture() {
    return advice.stream()
        .filter(GivenAdvice::isOpen)
        .filter(g -> isOfReadings(g.advice().id()))
        .toList();
  }

  private static boolean isOfReadings(AdviceId id) {
    return id == AdviceId.BREATHING_HUMID || id == AdviceId.BREATHING_DAMP;
  }

  /** Advice declined, to be signed line by line. */
  public List<GivenAdvice> declined() {
    return advice.stream().filter(GivenAdvice::declined).toList();
  }
}
