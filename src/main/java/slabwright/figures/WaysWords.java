package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.PocketAccess;
import slabwright.floor.reach.ReachCurve;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** What the machines' ways come to, in sentences; sheet 2 and the desk say the same. */
public final class WaysWords {
  /** No floor machine is narrower, mm (common practice, no source). */
  private static final double LEAST_BODY = 200;

  private final UnitSystem units;
  private final Words words;

  public WaysWords(UnitSystem units, Words words) {
    this.words = words;
    this.units = units;
  }

  /** How a machine would get to a pocket. */
  public String way(PocketAccess way) {
    if (way.bend().isPresent()) {
      MachinePassage bend = way.bend().get();
      return words.say("figures.ways-words.stuck", bend.machine().name(), length(-bend.spare()));
    }
    if (way.pass().isEmpty()) {
      return words.say("figures.ways-words.no-gap");
    }
    String gap = length(way.pass().get().width());
    if (way.body().orElse(0) < LEAST_BODY) {
      return words.say("figures.ways-words.too-narrow", gap);
    }
    String body = length(way.body().getAsDouble());
    return way.clearance() > 0
        ? words.say("figures.ways-words.passes-clear", gap, body, length(way.clearance()))
        : words.say("figures.ways-words.passes", gap, body);
  }

  /** Where the curve falls: what a wider body loses; nothing for a smooth curve. */
  public List<String> drops(ReachCurve curve) {
    List<String> all = new ArrayList<>();
    for (ReachCurve.Drop d : curve.drops()) {
      String body = length(d.from().body());
      String lost = QuantityFormat.area(d.lost(), units);
      all.add(
          curve.levelled()
              ? words.say("figures.ways-words.drop-once-level", body, lost)
              : words.say("figures.ways-words.drop", body, lost));
    }
    return all;
  }

  /** What a body of a width would grind, alone. */
  public String reading(List<ReachCurve> curves, double body) {
    String width = length(body);
    String found = percent(curves.get(0).share(body));
    Optional<ReachCurve> level = curves.stream().filter(ReachCurve::levelled).findFirst();
    return level
        .map(
            c ->
                words.say(
                    "figures.ways-words.reading-once-level", width, found, percent(c.share(body))))
        .orElseGet(() -> words.say("figures.ways-words.reading", width, found));
  }

  private static String percent(double share) {
    return QuantityFormat.number(share * 100, 1) + " %";
  }

  private String length(double mm) {
    return LengthFormat.show(mm, units);
  }
}
