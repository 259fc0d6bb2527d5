package slabwright.desk.model.input;

import java.util.Optional;
import java.util.function.Supplier;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * Reads the lengths typed in one place. A number without a unit has the one stated there; a length
 * far from what is usual is asked about once and taken when it is given again unchanged.
 */
public final class TypedLength {
  private final LengthUse use;
  private final Supplier<UnitSystem> units;
  private String asked = "";

  public TypedLength(LengthUse use, Supplier<UnitSystem> units) {
    this.use = use;
    this.units = units;
  }

  /** The unit of a bare number now. */
  public BareUnit bare() {
    return use.bare(units.get());
  }

  /** Reads a line. */
  public Result<Length> read(String text) {
    Result<Length> read = plain(text);
    boolean far = read instanceof Result.Ok<Length> ok && use.isFarOff(ok.value().mm());
    if (!far || text.equals(asked)) {
      asked = "";
      return read;
    }
    asked = text;
    String meant = shown(read.orThrow());
    return Result.refused(Message.of("desk.model.typed-length.far-off", meant));
  }

  /** Reads a line and asks about nothing, as while it is being typed. */
  public Result<Length> plain(String text) {
    return Length.parse(text, bare());
  }

  /** What a line would be taken as; empty while it can't be read. */
  public Optional<String> meaning(String text) {
    return plain(text) instanceof Result.Ok<Length> ok
        ? Optional.of(shown(ok.value()))
        : Optional.empty();
  }

  /** A length in the site's units. */
  public String shown(Length length) {
    return LengthFormat.show(length, units.get());
  }
}
