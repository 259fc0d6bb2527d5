package slabwright.units;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads temperatures and airflows as people write them. A number without a unit has that of the
 * site's system; any other may be written with it, {@code 72 F} and {@code 22 C} everywhere.
 */
public final class QuantityReader {
  private static final Pattern LINE =
      Pattern.compile("\\s*([-\u2212]?(?:\\d+(?:[.,]\\d+)?|[.,]\\d+))\\s*(.*?)\\s*");
  private static final Pattern THOUSANDS = Pattern.compile("(\\d),(\\d{3})(?!\\d)");

  private QuantityReader() {}

  /** Unit with its names, lower case and without blanks; {@code times} it is the unit kept. */
  private record Unit(double times, List<String> names) {
    static Unit of(double times, String... names) {
      return new Unit(times, List.of(names));
    }
  }

  private record Typed(double value, String unit) {}

  /** A temperature, °C. */
  public static Result<Double> temperature(String text, UnitSystem system) {
    Optional<Typed> typed = typed(text);
    String unit = typed.map(t -> t.unit().replace("\u00b0", "")).orElse("?");
    boolean bare = unit.isEmpty();
    if (unit.equals("c") || unit.equals("celsius") || (bare && system == UnitSystem.METRIC)) {
      return Result.ok(typed.orElseThrow().value());
    }
    return bare || unit.equals("f") || unit.equals("fahrenheit")
        ? Result.ok((typed.orElseThrow().value() - 32) * 5 / 9)
        : Result.refused(Message.of("units.quantity-reader.temperature", text.strip()));
  }

  /** An airflow, m³/h. */
  public static Result<Double> airflow(String text, UnitSystem system) {
    Unit cfm = Unit.of(60 * RateFormat.CUBIC_FOOT_M3, "cfm", "ft3/min", "ft\u00b3/min", "cuft/min");
    Unit metric = Unit.of(1, "m3/h", "m\u00b3/h", "m3/hr", "cmh");
    Unit litres = Unit.of(3.6, "l/s");
    return read(text, system, cfm, metric, List.of(litres))
        .map(Result::ok)
        .orElseGet(() -> Result.refused(Message.of("units.quantity-reader.airflow", text.strip())));
  }

  private static Optional<Double> read(
      String text, UnitSystem system, Unit feet, Unit metric, List<Unit> more) {
    Optional<Typed> typed = typed(text).filter(t -> t.value() >= 0);
    if (typed.isEmpty()) {
      return Optional.empty();
    }
    double v = typed.get().value();
    if (typed.get().unit().isEmpty()) {
      return Optional.of(v * (system == UnitSystem.METRIC ? metric : feet).times());
    }
    for (Unit u : List.of(feet, metric)) {
      if (u.names().contains(typed.get().unit())) {
        return Optional.of(v * u.times());
      }
    }
    return more.stream()
        .filter(u -> u.names().contains(typed.get().unit()))
        .findFirst()
        .map(u -> v * u.times());
  }

  private static Optional<Typed> typed(String text) {
    Matcher m = LINE.matcher(THOUSANDS.matcher(text).replaceAll("$1$2"));
    if (!m.matches()) {
      return Optional.empty();
    }
    double value = Double.parseDouble(m.group(1).replace('\u2212', '-').replace(',', '.'));
    return Optional.of(
        new Typed(value, m.group(2).toLowerCase(Locale.ROOT).replace(" ", "").replace(".", "")));
  }
}
