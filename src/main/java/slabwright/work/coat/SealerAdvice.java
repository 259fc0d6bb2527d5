package slabwright.work.coat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.AdviceId;
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
    return new ClientAdvice(
        AdviceId.SAMPLE_PANEL,
        "Approve a sample panel in the job's own colours on this slab before anything is dyed.",
        "Dye is translucent and can't be taken out: every slab shows it differently.");
  }

  private static ClientAdvice measure() {
    return new ClientAdvice(
        AdviceId.MOISTURE_TEST,
        "Measure the slab's moisture by ASTM F2170 before choosing a film-forming coat.",
        "A tight film over a damp slab blisters, whitens and lets go.");
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
          new ClientAdvice(
              AdviceId.BREATHING_HUMID,
              "Prefer a breathing, penetrating sealer; a film only as wet as its data sheet"
                  + " allows.",
              "The slab reads over 75 % RH (ASTM F2170), the common limit where a maker gives"
                  + " none."));
    }
    if (damp || emits) {
      advice.add(
          new ClientAdvice(
              AdviceId.BREATHING_DAMP,
              "Prefer a breathing, penetrating sealer; no two-part film before the slab is dry.",
              emits
                  ? "The slab gives off more than 3 lb/1000 ft² in 24 h (ASTM F1869)."
                  : "The plastic sheet (ASTM D4263) showed moisture."));
    }
    if (q.barrier().isEmpty()) {
      advice.add(
          new ClientAdvice(
              AdviceId.BARRIER_UNKNOWN,
              "Prefer a breathing sealer, or find out about the vapour barrier first.",
              "Nobody knows whether there is one; a dry reading today says nothing of next"
                  + " spring."));
    } else if (!q.barrier().get()) {
      advice.add(
          new ClientAdvice(
              AdviceId.BARRIER_NONE,
              "Prefer a breathing sealer.",
              "Without a vapour barrier moisture keeps coming from the ground."));
    }
  }

  private static void place(SealerParameters q, List<ClientAdvice> advice) {
    if (q.outdoors()) {
      advice.add(
          new ClientAdvice(
              AdviceId.OUTDOOR_BREATHING,
              "Outdoors prefer a breathing sealer that stands frost.",
              "Rain gets under a tight film at every joint and frost lifts it."));
    }
    sun(q).ifPresent(advice::add);
    wet(q).ifPresent(advice::add);
    traffic(q).ifPresent(advice::add);
  }

  private static Optional<ClientAdvice> sun(SealerParameters q) {
    String why = "Many two-part films yellow and many dyes fade in the sun.";
    if (q.use().sun().isEmpty() && !q.outdoors()) {
      return unasked(
          AdviceId.SUN_UNKNOWN,
          "Find out whether the sun falls on the floor; until then prefer a sealer and a dye that"
              + " the data sheet calls fast to sunlight.",
          why);
    }
    return given(
        q.use().sun(),
        AdviceId.SUN_FAST,
        "Prefer a sealer and a dye that the data sheet calls fast to sunlight.",
        q.use().sun().isEmpty() ? "Not asked; outdoors the sun is taken to reach it. " + why : why);
  }

  private static Optional<ClientAdvice> wet(SealerParameters q) {
    String why = "A sealed floor that gets wet is slippery.";
    if (q.use().wet().isEmpty() && !q.outdoors()) {
      return unasked(
          AdviceId.WET_UNKNOWN,
          "Find out whether the floor gets wet in use; until then put grit into the last coat and"
              + " measure the wet DCOF.",
          why);
    }
    return given(
        q.use().wet(),
        AdviceId.GRIT,
        "Put grit into the last coat and measure the wet DCOF.",
        q.use().wet().isEmpty() ? "Not asked; outdoors it is taken to get wet. " + why : why);
  }

  private static Optional<ClientAdvice> traffic(SealerParameters q) {
    String why = "Chairs and carts wear a penetrating sealer through first where people turn.";
    if (q.outdoors()) {
      return Optional.empty();
    }
    if (q.use().traffic().isEmpty()) {
      return unasked(
          AdviceId.TRAFFIC_UNKNOWN,
          "Find out whether chairs, carts or many feet go over the floor; until then prefer, on a"
              + " dry slab, a two-part topcoat over the sealer.",
          why);
    }
    return given(
        q.use().traffic(),
        AdviceId.TWO_PART_TRAFFIC,
        "On a dry slab prefer a two-part topcoat over the sealer.",
        why);
  }

  /** What nobody answered is taken as a yes, and said to be. */
  private static Optional<ClientAdvice> unasked(AdviceId id, String prefer, String why) {
    return Optional.of(new ClientAdvice(id, prefer, "Not asked yet, so taken as a yes. " + why));
  }

  private static Optional<ClientAdvice> given(
      Optional<Boolean> answer, AdviceId id, String prefer, String why) {
    return answer.orElse(true) ? Optional.of(new ClientAdvice(id, prefer, why)) : Optional.empty();
  }
}
