package slabwright.work.coat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.AdviceId;
import slabwright.units.Message;
import slabwright.work.rule.MoistureFormulas;

/**
 * What to prefer in a sealer and why: advice, not a rule. The kinds are common practice; whether a
 * product is of a kind, its data sheet says. A question that nobody answered never takes advice
 * away.
 */
public final class SealerAdvice {
  private SealerAdvice() {}

  /** The advice that the answers give, the most weighty first. */
  public static List<ClientAdvice> of(SealerParameters q) {
    List<ClientAdvice> advice = new ArrayList<>();
    if (!q.measured()) {
      advice.add(measure());
    }
    moisture(q, advice);
    place(q, advice);
    return List.copyOf(advice);
  }

  /** Where anything is dyed. */
  public static ClientAdvice samplePanel() {
    return ClientAdvice.of(
        AdviceId.SAMPLE_PANEL, Message.of("work.sealer-advice.dye-cant-be-taken-out"));
  }

  private static ClientAdvice measure() {
    return ClientAdvice.of(
        AdviceId.MOISTURE_TEST, Message.of("work.sealer-advice.a-tight-film-over-a-damp-slab"));
  }

  private static void moisture(SealerParameters q, List<ClientAdvice> advice) {
    boolean damp = q.damp().orElse(false);
    boolean emits =
        q.emission().isPresent()
            && q.emission().getAsDouble() > MoistureFormulas.COMMON_EMISSION_LIMIT;
    boolean humid =
        q.humidity().isPresent()
            && q.humidity().getAsDouble() > MoistureFormulas.COMMON_HUMIDITY_LIMIT;
    if (humid && !damp && !emits) {
      advice.add(
          ClientAdvice.of(
              AdviceId.BREATHING_HUMID, Message.of("work.sealer-advice.the-slab-reads-over")));
    }
    if (damp || emits) {
      advice.add(
          ClientAdvice.of(
              AdviceId.BREATHING_DAMP,
              emits
                  ? Message.of("work.sealer-advice.the-slab-gives-off-more")
                  : Message.of("work.sealer-advice.the-plastic-sheet-showed")));
    }
    if (q.barrier().isEmpty()) {
      advice.add(
          ClientAdvice.of(
              AdviceId.BARRIER_UNKNOWN,
              Message.of("work.sealer-advice.nobody-knows-of-a-barrier")));
    } else if (!q.barrier().get()) {
      advice.add(
          ClientAdvice.of(
              AdviceId.BARRIER_NONE, Message.of("work.sealer-advice.no-vapour-barrier")));
    }
  }

  private static void place(SealerParameters q, List<ClientAdvice> advice) {
    if (q.outdoors()) {
      advice.add(
          ClientAdvice.of(
              AdviceId.OUTDOOR_BREATHING, Message.of("work.sealer-advice.rain-and-frost")));
    }
    sun(q).ifPresent(advice::add);
    wet(q).ifPresent(advice::add);
    traffic(q).ifPresent(advice::add);
  }

  private static Optional<ClientAdvice> sun(SealerParameters q) {
    if (q.use().sun().isEmpty() && !q.outdoors()) {
      return unasked(AdviceId.SUN_UNKNOWN, Message.of("work.sealer-advice.sun-unasked"));
    }
    return given(
        q.use().sun(),
        AdviceId.SUN_FAST,
        q.use().sun().isEmpty()
            ? Message.of("work.sealer-advice.sun-outdoors")
            : Message.of("work.sealer-advice.sun"));
  }

  private static Optional<ClientAdvice> wet(SealerParameters q) {
    if (q.use().wet().isEmpty() && !q.outdoors()) {
      return unasked(AdviceId.WET_UNKNOWN, Message.of("work.sealer-advice.wet-unasked"));
    }
    return given(
        q.use().wet(),
        AdviceId.GRIT,
        q.use().wet().isEmpty()
            ? Message.of("work.sealer-advice.wet-outdoors")
            : Message.of("work.sealer-advice.wet"));
  }

  private static Optional<ClientAdvice> traffic(SealerParameters q) {
    if (q.outdoors()) {
      return Optional.empty();
    }
    if (q.use().traffic().isEmpty()) {
      return unasked(AdviceId.TRAFFIC_UNKNOWN, Message.of("work.sealer-advice.traffic-unasked"));
    }
    return given(
        q.use().traffic(), AdviceId.TWO_PART_TRAFFIC, Message.of("work.sealer-advice.traffic"));
  }

  /** What nobody answered is taken as a yes; {@code why} says so. */
  private static Optional<ClientAdvice> unasked(AdviceId id, Message why) {
    return Optional.of(ClientAdvice.of(id, why));
  }

  private static Optional<ClientAdvice> given(Optional<Boolean> answer, AdviceId id, Message why) {
    return answer.orElse(true) ? Optional.of(ClientAdvice.of(id, why)) : Optional.empty();
  }
}
