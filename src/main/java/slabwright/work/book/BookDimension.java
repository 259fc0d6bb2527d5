package slabwright.work.book;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.units.Result;

/**
 * What kind of number a shop book entry is, the units it may be written in and the unit it is kept
 * in.
 */
enum BookDimension {
  /** Kept in mm. */
  LENGTH("8 in"),
  /** Kept in mm³. */
  VOLUME("1 gal"),
  /** Kept in kg. */
  MASS("40 lb"),
  /** Kept in minutes. */
  TIME("4 h"),
  /** Kept in °C. */
  TEMPERATURE("70 F"),
  /** Kept in mm²/mm³, which is m²/L. */
  COVERAGE("300 ft2/gal"),
  /** Kept in mm². */
  AREA("4000 ft2"),
  /** Kept in mm² an hour. */
  AREA_RATE("250 ft2/h"),
  /** Kept in mm an hour. */
  RUN_RATE("40 ft/h"),
  /** Kept in m³ a minute. */
  AIRFLOW("2000 cfm"),
  /** Kept as a share, 0.1 for 10 %. */
  SHARE("10 %"),
  /** Kept in kg/mm². */
  MASS_PER_AREA("200 g/m2"),
  /** Kept in kg/mm³. */
  MASS_PER_VOLUME("3.5 oz/gal"),
  /** Kept in parts per million of air. */
  PPM("250 ppm"),
  /** Kept in g/mol. */
  MOLAR_MASS("58.08 g/mol"),
  /** A bare number. */
  NUMBER("3");

  private record Unit(String name, double size) {}

  private static final Pattern VALUE = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*(.*)");

  private final String example;

  BookDimension(String example) {
    this.example = example;
  }

  /** A value as it is written. */
  String example() {
    return example;
  }

  private static Unit u(String name, double size) {
    return new Unit(name, size);
  }

  private List<Unit> units() {
    double ounce = RateFormat.POUND_KG / 16;
    double gallon = QuantityFormat.US_GALLON_MM3;
    double foot2 = QuantityFormat.SQUARE_FOOT_MM2;
    return switch (this) {
      case LENGTH, TEMPERATURE -> List.of();
      case VOLUME ->
          List.of(
              u("gal", gallon),
              u("qt", gallon / 4),
              u("floz", gallon / 128),
              u("l", 1e6),
              u("ml", 1e3));
      case MASS -> List.of(u("kg", 1), u("g", 0.001), u("lb", RateFormat.POUND_KG), u("oz", ounce));
      case TIME -> List.of(u("min", 1), u("h", 60), u("d", 1440));
      case COVERAGE -> List.of(u("ft2/gal", RateFormat.SQUARE_FOOT_PER_GALLON), u("m2/l", 1));
      case AREA -> List.of(u("ft2", foot2), u("m2", 1e6));
      case AREA_RATE -> List.of(u("ft2/h", foot2), u("m2/h", 1e6));
      case RUN_RATE -> List.of(u("ft/h", 304.8), u("m/h", 1000));
      case AIRFLOW ->
          List.of(u("cfm", RateFormat.CUBIC_FOOT_M3), u("m3/h", 1 / 60.0), u("l/s", 0.06));
      case SHARE -> List.of(u("%", 0.01));
      case MASS_PER_AREA ->
          List.of(u("g/m2", 1e-9), u("kg/m2", 1e-6), u("lb/ft2", RateFormat.POUND_KG / foot2));
      case MASS_PER_VOLUME -> List.of(u("oz/gal", ounce / gallon), u("g/l", 1e-9), u("kg/l", 1e-6));
      case PPM -> List.of(u("ppm", 1));
      case MOLAR_MASS -> List.of(u("g/mol", 1));
      case NUMBER -> List.of(u("", 1));
    };
  }

  /** The number in the kept unit. */
  Result<Double> read(String text) {
    return switch (this) {
      case LENGTH -> length(text);
      case TEMPERATURE -> temperature(text);
      default -> scaled(text);
    };
  }

  private Result<Double> scaled(String text) {
    Matcher m = VALUE.matcher(text.strip());
    if (!m.matches()) {
      return bad(text);
    }
    String word = m.group(2).toLowerCase(Locale.ROOT).replace(" ", "").replace("sqft", "ft2");
    String name = word.replace('²', '2').replace('³', '3');
    Optional<Unit> unit = units().stream().filter(x -> x.name().equals(name)).findFirst();
    return unit.isEmpty() ? bad(text) : checked(text, m.group(1), unit.get());
  }

  private Result<Double> checked(String text, String number, Unit unit) {
    double value = Double.parseDouble(number) * unit.size();
    boolean tooLittle = needsMoreThanNothing() ? value <= 0 : value < 0;
    if (tooLittle || (this == SHARE && value >= 1)) {
      return Result.refused(Message.of("work.book-dimension.is-out-of-range-write", text, example));
    }
    return Result.ok(value);
  }

  /** What is divided by, or makes no sense as nothing. */
  private boolean needsMoreThanNothing() {
    return switch (this) {
      case LENGTH, VOLUME, COVERAGE, AREA, AREA_RATE, RUN_RATE, PPM, MOLAR_MASS, NUMBER -> true;
      case MASS, TIME, TEMPERATURE, AIRFLOW, SHARE, MASS_PER_AREA, MASS_PER_VOLUME -> false;
    };
  }

  private Result<Double> length(String text) {
    if (!(Length.parse(text) instanceof Result.Ok<Length> read)) {
      return bad(text);
    }
    return read.value().mm() <= 0
        ? Result.refused(Message.of("work.book-dimension.is-out-of-range-write", text, example))
        : Result.ok(read.value().mm());
  }

  private Result<Double> temperature(String text) {
    Matcher m = VALUE.matcher(text.strip());
    if (!m.matches()) {
      return bad(text);
    }
    double number = Double.parseDouble(m.group(1));
    return switch (m.group(2).replace("°", "").strip()) {
      case "C" -> Result.ok(number);
      case "F" -> Result.ok((number - 32) * 5 / 9);
      default -> bad(text);
    };
  }

  private Result<Double> bad(String text) {
    return Result.refused(Message.of("work.book-dimension.cant-be-read-write-for", text, example));
  }
}
