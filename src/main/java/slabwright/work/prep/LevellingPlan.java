package slabwright.work.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.Kits;

/**
 * Trenches brought level: mortar for the low ones, concrete ground off the proud ones.
 *
 * @param trenches each with its volume
 * @param mm3 mortar that fills all low ones; missing when a depth is
 * @param kits to buy, the loss included
 */
public record LevellingPlan(List<Trench> trenches, Figure<Double> mm3, Figure<Kits> kits) {
  /**
   * A trench.
   *
   * @param low filled, not ground off
   * @param mm2 its area
   * @param off depth or height, mm
   * @param mm3 area times depth or height
   */
  public record Trench(
      Message name, boolean low, double mm2, OptionalDouble off, OptionalDouble mm3) {
    static Trench of(PrepParameters.ToLevel t) {
      OptionalDouble mm3 =
          t.off().isPresent()
              ? OptionalDouble.of(t.mm2() * t.off().getAsDouble())
              : OptionalDouble.empty();
      return new Trench(t.name(), t.isLow(), t.mm2(), t.off(), mm3);
    }
  }

  public LevellingPlan {
    trenches = List.copyOf(trenches);
  }

  static LevellingPlan of(List<PrepParameters.ToLevel> toLevel, ShopBook book) {
    List<Trench> all = toLevel.stream().map(Trench::of).toList();
    List<Figure<Double>> volumes = new ArrayList<>();
    all.stream().filter(Trench::low).forEach(t -> volumes.add(volume(t)));
    Figure<Double> mm3 = Figure.all(volumes).map(l -> l.stream().mapToDouble(v -> v).sum());
    Figure<Kits> kits =
        volumes.isEmpty() ? Figure.known(new Kits(List.of(), 0)) : mm3.flatMap(v -> kits(v, book));
    return new LevellingPlan(all, mm3, kits);
  }

  private static Figure<Double> volume(Trench t) {
    return t.mm3().isPresent()
        ? Figure.known(t.mm3().getAsDouble())
        : Figure.refused(Message.of("work.levelling-plan.measure-the-depth", t.name()));
  }

  private static Figure<Kits> kits(double mm3, ShopBook book) {
    return book.first(ProductKind.LEVELLER)
        .map(p -> kits(mm3, p))
        .orElseGet(() -> Figure.missing(Message.of("work.levelling-plan.a-levelling-mortar")));
  }

  private static Figure<Kits> kits(double mm3, Product p) {
    return p.spread()
        .loss()
        .with(p.spread().kits(), (loss, kits) -> Kits.of(mm3 / (1 - loss), kits));
  }

  /** Whether mortar is needed. */
  public boolean fills() {
    return trenches.stream().anyMatch(Trench::low);
  }
}
