package slabwright.inlay.masking;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slabwright.units.Message;

/**
 * The dye for one stencil: litres = area × coats / coverage / (1 − loss).
 *
 * @param area misted, mm²
 * @param litres all coats together; empty when the shop book lacks a figure
 * @param jars sprayer jars, rounded up; empty when litres or the jar's size is not known
 * @param missing what is not in the shop book
 */
public record DyeNeed(double area, OptionalDouble litres, OptionalInt jars, List<Message> missing) {
  private static final double MM2_PER_M2 = 1e6;

  public DyeNeed {
    missing = List.copyOf(missing);
  }

  /** The need by the book; nothing is guessed where the book is silent. */
  public static DyeNeed of(double area, DyeRates book) {
    List<Message> missing = new ArrayList<>();
    note(book.coats().isEmpty(), Message.of("inlay.dye-need.no-coats"), missing);
    note(book.coverage().isEmpty(), Message.of("inlay.dye-need.no-coverage"), missing);
    note(book.loss().isEmpty(), Message.of("inlay.dye-need.no-loss"), missing);
    OptionalDouble litres = missing.isEmpty() ? litres(area, book) : OptionalDouble.empty();
    note(book.jar().isEmpty(), Message.of("inlay.dye-need.no-jar-size"), missing);
    return new DyeNeed(area, litres, missing.isEmpty() ? jars(litres, book) : NO_JARS, missing);
  }

  private static final OptionalInt NO_JARS = OptionalInt.empty();

  private static void note(boolean absent, Message what, List<Message> missing) {
    if (absent) {
      missing.add(what);
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
