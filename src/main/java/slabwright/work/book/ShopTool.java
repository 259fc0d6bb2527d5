package slabwright.work.book;

import java.math.BigDecimal;
import slabwright.units.Message;
import slabwright.work.step.ToolKind;

/**
 * A tool the crew owns.
 *
 * @param kind floor grinder, hand grinder, vacuum, fan or sprayer
 * @param count how many of it there are; not said is one
 * @param wheelMm diameter of a hand grinder's wheel
 * @param airflow m³/min: what a vacuum pulls, what a grinder's maker asks for, what a fan moves
 * @param bagKg how much dust one bag of a vacuum holds
 * @param dayPrice what a day of it costs the client
 */
public record ShopTool(
    String name,
    Figure<ToolKind> kind,
    Figure<Integer> count,
    Figure<Double> wheelMm,
    Figure<Double> airflow,
    Figure<Double> bagKg,
    Figure<BigDecimal> bagPrice,
    Figure<BigDecimal> dayPrice) {

  static ShopTool read(BookSection s) {
    return new ShopTool(
        s.name(),
        s.choice(
            "kind", Message.of("work.shop-tool.floor-grinder-hand-grinder-vacuum"), ToolKind.class),
        s.whole("count"),
        s.number("wheel", BookDimension.LENGTH),
        s.number("airflow", BookDimension.AIRFLOW),
        s.number("bag_holds", BookDimension.MASS),
        s.price("price_a_bag"),
        s.price("price_a_day"));
  }

  /** Its name for a reader. */
  public Message called() {
    return kind.maybe().map(k -> called(name, k)).orElse(Message.of("work.shop-tool.named", name));
  }

  /**
   * A tool's name for a reader; one that is named by its kind, with a number or without, is told in
   * the reader's language, and what only the shop can say is told as the shop says it.
   */
  public static Message called(String name, ToolKind kind) {
    String word = kind.word();
    if (name.equals(word)) {
      return kind.label();
    }
    String rest = name.startsWith(word + " ") ? name.substring(word.length() + 1) : "";
    return !rest.isEmpty() && rest.chars().allMatch(Character::isDigit)
        ? Message.of("work.shop-tool.numbered", kind.label(), rest)
        : Message.of("work.shop-tool.named", name);
  }

  /** Whether the book calls it so. */
  public boolean is(ToolKind what) {
    return kind.maybe().filter(what::equals).isPresent();
  }
}
