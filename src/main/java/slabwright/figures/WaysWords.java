package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.floor.PocketAccess;
import slabwright.floor.ReachCurve;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** What the machines' ways come to, in sentences; sheet 2 and the desk say the same. */
public final class WaysWords {
  /** No floor machine is narrower, mm (common practice, no source). */
  private static final double LEAST_BODY = 200;

  private final UnitSystem units;

  public WaysWords(UnitSystem units) {
    this.units = units;
  }

  /** How a machine would get to a pocket. */
  public String way(PocketAccess way) {
    if (way.pass().isEmpty()) {
      return "No gap leads there: by hand alone, or level the trench in the way first.";
    }
    String gap = "Narrowest pass " + length(way.pass().get().width());
    if (way.body().orElse(0) < LEAST_BODY) {
      return gap + ": too narrow for a machine with its clearance.";
    }
    return gap
        + ": a machine up to "
        + length(way.body().getAsDouble())
        + " wide would get through"
        + (way.clearance() > 0 ? ", " + length(way.clearance()) + " clear at each side." : ".");
  }

  /** Where the curve falls: what a wider body loses; nothing for a smooth curve. */
  public List<String> drops(ReachCurve curve) {
    List<String> all = new ArrayList<>();
    for (ReachCurve.Drop d : curve.drops()) {
      all.add(
          (curve.levelled() ? "Once level: a" : "A")
              + " body wider than "
              + length(d.from().body())
              + " loses "
              + QuantityFormat.area(d.lost(), units)
              + " more.");
    }
    return all;
  }

  /** What a body of a width would grind, alone. */
  public String reading(List<ReachCurve> curves, double body) {
    StringBuilder words = new StringBuilder(length(body) + " wide: ");
    words.append(percent(curves.get(0).share(body)));
    Optional<ReachCurve> level = curves.stream().filter(ReachCurve::levelled).findFirst();
    level.ifPresent(c -> words.append(", once level ").append(percent(c.share(body))));
    return words.append(" of the floor").toString();
  }

  private static String percent(double share) {
    return QuantityFormat.number(share * 100, 1) + " %";
  }

  private String length(double mm) {
    return LengthFormat.show(mm, units);
  }
}
