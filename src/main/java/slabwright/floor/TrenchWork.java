package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.TrenchLevel;
import slabwright.units.Message;

/**
 * A trench of new concrete, as it lies and with what hand work it asks for.
 *
 * @param length along its middle line inside the outline, mm; empty for a free shape
 * @param width mm; empty for a free shape
 * @param region what of it is floor
 * @param handFound hand work on it as found, mm²
 * @param handLevel hand work on it once every trench is level, mm²
 */
public record TrenchWork(
    Mark mark,
    MarkKind.Trench kind,
    OptionalDouble length,
    OptionalDouble width,
    Region region,
    double handFound,
    double handLevel) {
  /** Every trench of a floor that shows, in the order of its marks. */
  public static List<TrenchWork> of(FloorTakeoff t) {
    List<TrenchWork> all = new ArrayList<>();
    for (Zone z : t.zones()) {
      z.mark()
          .filter(m -> m.kind() instanceof MarkKind.Trench)
          .ifPresent(m -> all.add(of(t, m, z.region())));
    }
    return all;
  }

  private static TrenchWork of(FloorTakeoff t, Mark mark, Region region) {
    return new TrenchWork(
        mark,
        (MarkKind.Trench) mark.kind(),
        length(mark, t.gross()),
        width(mark.form()),
        region,
        t.asFound().trenches().getOrDefault(mark.id(), 0.0),
        t.levelled().trenches().getOrDefault(mark.id(), 0.0));
  }

  private static OptionalDouble length(Mark mark, Region gross) {
    if (mark.form() instanceof Form.Strip) {
      return OptionalDouble.of(EdgeTally.length(mark, gross));
    }
    return size(mark.form(), true);
  }

  private static OptionalDouble width(Form form) {
    return form instanceof Form.Strip s ? OptionalDouble.of(s.width().mm()) : size(form, false);
  }

  private static OptionalDouble size(Form form, boolean longer) {
    Optional<Vec> sides =
        form instanceof Form.Rectangle r
            ? Optional.of(new Vec(r.length().mm(), r.width().mm()))
            : form instanceof Form.RoundEnded e
                ? Optional.of(new Vec(e.length().mm(), e.width().mm()))
                : Optional.empty();
    return sides
        .map(s -> longer ? Math.max(s.x(), s.y()) : Math.min(s.x(), s.y()))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /** Area in mm². */
  public double area() {
    return region.area();
  }

  /** How far it lies off the old slab, mm; empty when it was not measured. */
  public OptionalDouble off() {
    return kind.off().map(o -> OptionalDouble.of(o.mm())).orElse(OptionalDouble.empty());
  }

  /** What is missing in a low one or stands over in a proud one, mm³; empty when not measured. */
  public OptionalDouble volume() {
    return off().isPresent()
        ? OptionalDouble.of(area() * off().getAsDouble())
        : OptionalDouble.empty();
  }

  /** How it lies. */
  public Message state() {
    Message lie =
        switch (kind.lie()) {
          case PROUD -> Message.of("floor.trench-work.proud");
          case FLUSH -> Message.of("floor.trench-work.flush");
          case LOW -> Message.of("floor.trench-work.low");
        };
    return kind.levelled() && kind.lie() != TrenchLevel.FLUSH
        ? Message.of("floor.trench-work.levelled", lie)
        : lie;
  }

  /** What is due by hand before the machine crosses. */
  public Message due() {
    if (!kind.stopsMachine()) {
      return Message.of("floor.trench-work.machine-crosses");
    }
    if (kind.lie() == TrenchLevel.PROUD) {
      return off().isPresent()
          ? Message.of("floor.trench-work.grind-flush-first")
          : Message.of("floor.trench-work.measure-height-grind");
    }
    return off().isPresent()
        ? Message.of("floor.trench-work.fill-level-first")
        : Message.of("floor.trench-work.measure-depth-fill");
  }
}
