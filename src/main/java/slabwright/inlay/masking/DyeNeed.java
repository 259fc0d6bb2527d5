package slabwright.inlay.masking;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The dye for one stencil: litres = area × coats / coverage / (1 − loss).
 *
 * @param area misted, mm²
 * @param litres all coats together; empty when the shop book lacks a figure
 * @param jars sprayer jars, rounded up; empty when litres or the jar's size is not known
 * @param missing what is not in the shop book
 */
public record DyeNeed(double area, OptionalDouble litres, OptionalInt jars, List<String> missing) {
  private static final double MM2_PER_M2 = 1e6;

  public DyeNeed {
    missing = List.copyOf(missing);
  }

  /** The need by the book; nothing is guessed where the book is silent. */
  public static DyeNeed of(double area, DyeRates book) {
    List<String> missing = new ArrayList<>();
    note(book.coats().isEmpty(), "number of mist coats", missing);
    note(book.coverage().isEmpty(), "dye coverage", missing);
    note(book.loss().isEmpty(), "spray loss", missing);
    OptionalDouble litres = missing.isEmpty() ? litres(area, book) : OptionalDouble.empty();
    note(book.jar().isEmpty(), "jar size", missing);
    return new DyeNeed(area, litres, missing.isEmpty() ? jars(litres, book) : NO_JARS, missing);
  }

  private static final OptionalInt NO_JARS = OptionalInt.empty();

  private static void note(boolean absent, String what, List<String> missing) {
    if (absent) {
      missing.add(what + ": not in the shop book");
    }
  }

  private static OptionalDouble litres(double area, DyeRates book) {
    double once = area / MM2_PER_M2 / book.coverage().getAsDouble();
    return OptionalDouble.of(once * book.coats().getAsInt() / (1 - book.loss().getAsDouble()));
  }

  private static OptionalInt jars(OptionalDouble litres, DyeRates book) {
    return OptionalInt.of((int) Math.ceil(litres.getAsDouble() / book.jar().getAsDouble() - 1e-9));
  }
}
