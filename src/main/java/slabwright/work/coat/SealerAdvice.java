package slabwright.work.coat;

import java.util.ArrayList;
import java.util.List;
import slabwright.work.rule.Moisture;

/**
 * What to prefer in a sealer and why: advice, not a rule. The kinds are common practice; whether a
 * product is of a kind, its data sheet says.
 */
public final class SealerAdvice {
  private SealerAdvice() {}

  /** The advice that the answers give, the most weighty first. */
  public static List<Advice> of(SealerQuestions q) {
    List<Advice> advice = new ArrayList<>();
    if (!q.measured()) {
      advice.add(measure());
    }
    moisture(q, advice);
    place(q, advice);
    return List.copyOf(advice);
  }

  private static Advice measure() {
    return new Advice(
        "moisture-test",
        "Measure the slab's moisture by ASTM F2170 before choosing a film-forming coat.",
        "A tight film over a damp slab blisters, whitens and lets go.");
  }

  private static void moisture(SealerQuestions q, List<Advice> advice) {
    boolean damp = q.damp().orElse(false);
    boolean emits =
        q.emission().isPresent() && q.emission().getAsDouble() > Moisture.COMMON_EMISSION_LIMIT;
    boolean humid =
        q.humidity().isPresent() && q.humidity().getAsDouble() > Moisture.COMMON_HUMIDITY_LIMIT;
    if (humid && !damp && !emits) {
      advice.add(
          new Advice(
              "breathing-humid",
              "Prefer a breathing, penetrating sealer; a film only as wet as its data sheet"
                  + " allows.",
              "The slab reads over 75 % RH (ASTM F2170), the common limit where a maker gives"
                  + " none."));
    }
    if (damp || emits) {
      advice.add(
          new Advice(
              "breathing-damp",
              "Prefer a breathing, penetrating sealer; no two-part film before the slab is dry.",
              emits
                  ? "The slab gives off more than 3 lb/1000 ft² in 24 h (ASTM F1869)."
                  : "The plastic sheet (ASTM D4263) showed moisture."));
    }
    if (q.barrier().isEmpty()) {
      advice.add(
          new Advice(
              "barrier-unknown",
              "Prefer a breathing sealer, or find out about the vapour barrier first.",
              "Nobody knows whether there is one; a dry reading today says nothing of next"
                  + " spring."));
    } else if (!q.barrier().get()) {
      advice.add(
          new Advice(
              "barrier-none",
              "Prefer a breathing sealer.",
              "Without a vapour barrier moisture keeps coming from the ground."));
    }
  }

  private static void place(SealerQuestions q, List<Advice> advice) {
    if (q.outdoors()) {
      advice.add(
          new Advice(
              "outdoor-breathing",
              "Outdoors prefer a breathing sealer that stands frost.",
              "Rain gets under a tight film at every joint and frost lifts it."));
    }
    if (q.sun()) {
      advice.add(
          new Advice(
              "sun-fast",
              "Prefer a sealer and a dye that the data sheet calls fast to sunlight.",
              "Many two-part films yellow and many dyes fade in the sun."));
    }
    if (q.wet()) {
      advice.add(
          new Advice(
              "grit",
              "Put grit into the last coat and measure the wet DCOF.",
              "A sealed floor that gets wet is slippery."));
    }
    if (q.heavyTraffic() && !q.outdoors()) {
      advice.add(
          new Advice(
              "two-part-traffic",
              "On a dry slab prefer a two-part topcoat over the sealer.",
              "Chairs and carts wear a penetrating sealer through first where people turn."));
    }
  }
}
