package slabwright.work.air;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Breathing protection that somebody named.
 *
 * @param name as it was written
 * @param factor its assigned protection factor (29 CFR 1910.134(d)(3)(i)(A), table 1)
 */
public record BreathingProtection(String name, double factor) {
  private static final Pattern STATED = typed("\\bapf\\s*(\\d{1,5})\\b");
  private static final Pattern WHOLE_FACE = typed("full.?face");
  private static final Pattern FOR_VAPOUR = typed("vapou?r|supplied.air|air.?line");

  /** Half mask, the lowest of its kinds. */
  private static final double HALF_MASK = 10;

  private static final double FULL_FACE = 50;

  private static Pattern typed(String regex) {
    return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
  }

  public BreathingProtection {
    if (!(factor >= 1)) {
      throw new IllegalArgumentException("a protection factor is at least 1: " + name);
    }
  }

  /**
   * What a name says; empty where it does not say that it is for vapour, for a dust mask holds none
   * back.
   */
  public static Optional<BreathingProtection> named(String name) {
    if (!FOR_VAPOUR.matcher(name).find()) {
      return Optional.empty();
    }
    Matcher stated = STATED.matcher(name);
    double factor =
        stated.find()
            ? Math.max(1, Double.parseDouble(stated.group(1)))
            : WHOLE_FACE.matcher(name).find() ? FULL_FACE : HALF_MASK;
    return Optional.of(new BreathingProtection(name, factor));
  }
}
