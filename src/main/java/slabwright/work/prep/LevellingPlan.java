package slabwright.work.prep;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.ProductKind;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.Kits;

/**
 * Trenches brought level: mortar for the low ones, concrete ground off the proud ones.
 *
 * @param trenches each with its volume
 * @param mm3 mortar that fills all low ones; missing when a depth is
 * @param kits to buy, the loss included
 * @param mixing of each low trench, in batches that are used up before they set
 */
public record LevellingPlan(
    List<Trench> trenches, Figure<Double> mm3, Figure<Kits> kits, List<MixPlan> mixing) {
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
    mixing = List.copyOf(mixing);
  }

  /**
   * The trenches of a floor.
   *
   * @param warmer of slab and air, °C
   */
  static LevellingPlan of(
      List<PrepParameters.ToLevel> toLevel, ShopBook book, Figure<Double> warmer) {
    List<Trench> all = toLevel.stream().map(Trench::of).toList();
    List<PrepParameters.ToLevel> low =
        toLevel.stream().filter(PrepParameters.ToLevel::isLow).toList();
    Figure<Double> mm3 =
        unmeasured(toLevel)
            .<Figure<Double>>map(Figure::refused)
            .orElseGet(
                () ->
                    Figure.known(
                        all.stream().filter(Trench::low).mapToDouble(LevellingPlan::known).sum()));
    List<MixPlan> mixing = low.stream().map(t -> mixing(t, book, warmer)).toList();
    Figure<Kits> kits =
        low.isEmpty()
            ? Figure.known(new Kits(List.of(), 0))
            : mm3.flatMap(v -> kits(v, mixing, book));
    return new LevellingPlan(all, mm3, kits, mixing);
  }

  private static double known(Trench t) {
    return t.mm3().orElseThrow();
  }

  /**
   * All that is measured on one walk, where mortar is open: the depth of each low trench, and the
   * height of each proud one, which nothing is reckoned from but who grinds asks for.
   */
  private static Optional<Message> unmeasured(List<PrepParameters.ToLevel> toLevel) {
    List<PrepParameters.ToLevel> open = toLevel.stream().filter(t -> t.off().isEmpty()).toList();
    List<Message> depths = names(open, true);
    List<Message> heights = names(open, false);
    if (depths.isEmpty()) {
      return Optional.empty();
    }
    if (depths.size() == 1 && heights.isEmpty()) {
      return Optional.of(Message.of("work.levelling-plan.measure-the-depth", depths.get(0)));
    }
    return Optional.of(
        Message.of(
            "work.levelling-plan.measure-all",
            depths.size(),
            listed(depths),
            heights.size(),
            heights.isEmpty() ? "" : listed(heights)));
  }

  private static List<Message> names(List<PrepParameters.ToLevel> open, boolean low) {
    return open.stream().filter(t -> t.isLow() == low).map(t -> t.name()).toList();
  }

  private static Message listed(List<Message> names) {
    return names.stream()
        .reduce((a, b) -> Message.of("work.levelling-plan.and-next", a, b))
        .orElseThrow();
  }

  private static MixPlan mixing(PrepParameters.ToLevel t, ShopBook book, Figure<Double> warmer) {
    return MixPlan.of(
        t.place(),
        volume(Trench.of(t))
            .with(
                RateArithmetic.time(t.mm2(), book.prep().trenchLevelling()),
                (mm3, time) -> List.of(new MixPieces.Piece(mm3, time))),
        book.first(ProductKind.LEVELLER),
        Message.of("work.levelling-plan.a-levelling-mortar"),
        true,
        warmer,
        PrepPlan.hands(book));
  }

  private static Figure<Double> volume(Trench t) {
    return t.mm3().isPresent()
        ? Figure.known(t.mm3().getAsDouble())
        : Figure.refused(Message.of("work.levelling-plan.measure-the-depth", t.name()));
  }

  private static Figure<Kits> kits(double mm3, List<MixPlan> mixing, ShopBook book) {
    return book.first(ProductKind.LEVELLER)
        .map(p -> MixPlan.kits(mm3, p, mixing))
        .orElseGet(() -> Figure.missing(Message.of("work.levelling-plan.a-levelling-mortar")));
  }

  /** Whether mortar is needed. */
  public boolean fills() {
    return trenches.stream().anyMatch(Trench::low);
  }
}
