package slabwright.work.air;

import java.util.Locale;
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
  private static final Pattern STATED = Pattern.compile("\\bapf\\s*(\\d{1,5})\\b");

  /** Half mask, the lowest of its kinds. */
  private static final double HALF_MASK = 10;

  private static final double FULL_FACE = 50;

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
    String words = name.toLowerCase(Locale.ROOT);
    if (!isForVapour(words)) {
      return Optional.empty();
    }
    Matcher stated = STATED.matcher(words);
    double factor =
        stated.find()
            ? Math.max(1, Double.parseDouble(stated.group(1)))
            : words.contains("full face") ? FULL_FACE : HALF_MASK;
    return Optional.of(new BreathingProtection(name, factor));
  }

  private static boolean isForVapour(String words) {
    return words.contains("vapour")
        || words.contains("vapor")
        || words.contains("supplied air")
        || words.contains("air line")
        || words.contains("airline");
  }
}
