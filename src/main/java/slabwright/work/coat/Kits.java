package slabwright.work.coat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.book.Figure;
import slabwright.work.book.Kit;

/**
 * Whole kits to buy.
 *
 * @param lines how many of which
 * @param needed mm³ that are needed; the rest is left over
 */
public record Kits(List<Line> lines, double needed) {
  /** A number of one kit. */
  public record Line(Kit kit, int count) {}

  public Kits {
    lines = List.copyOf(lines);
  }

  /** The whole kits with the least left over, and of those the fewest. */
  public static Kits of(double needed, List<Kit> sold) {
    List<Kit> largestFirst =
        sold.stream().sorted(Comparator.comparingDouble(Kit::mm3).reversed()).toList();
    if (largestFirst.isEmpty()) {
      throw new IllegalArgumentException("a product is sold in some kit");
    }
    return new Kits(best(needed, largestFirst), needed);
  }

  /** The kits of both, equal ones counted together. */
  public Kits and(Kits more) {
    List<Line> all = new ArrayList<>(lines);
    for (Line line : more.lines()) {
      int at = all.stream().map(Line::kit).toList().indexOf(line.kit());
      if (at < 0) {
        all.add(line);
      } else {
        all.set(at, new Line(line.kit(), all.get(at).count() + line.count()));
      }
    }
    return new Kits(all, needed + more.needed());
  }

  private static List<Line> best(double left, List<Kit> sold) {
    Kit kit = sold.get(0);
    List<Kit> smaller = sold.subList(1, sold.size());
    int most = (int) Math.max(0, Math.ceil(left / kit.mm3() - 1e-9));
    if (smaller.isEmpty()) {
      return most == 0 ? List.of() : List.of(new Line(kit, most));
    }
    List<Line> best = with(kit, most, List.of());
    for (int n = Math.max(0, most - 1); n >= Math.max(0, most - LOOK_BACK); n--) {
      List<Line> other = with(kit, n, best(left - n * kit.mm3(), smaller));
      best = better(best, other);
    }
    return best;
  }

  /** How many fewer of the larger kit are tried; enough for sizes such as 1 and 5 gal. */
  private static final int LOOK_BACK = 8;

  private static List<Line> with(Kit kit, int count, List<Line> rest) {
    List<Line> lines = new ArrayList<>();
    if (count > 0) {
      lines.add(new Line(kit, count));
    }
    lines.addAll(rest);
    return lines;
  }

  private static List<Line> better(List<Line> a, List<Line> b) {
    double less = volume(b) - volume(a);
    boolean equal = Math.abs(less) <= 1e-9 * volume(a);
    return equal ? count(b) < count(a) ? b : a : less < 0 ? b : a;
  }

  private static double volume(List<Line> lines) {
    return lines.stream().mapToDouble(l -> l.kit().mm3() * l.count()).sum();
  }

  private static int count(List<Line> lines) {
    return lines.stream().mapToInt(Line::count).sum();
  }

  /** All bought, mm³. */
  public double bought() {
    return volume(lines);
  }

  public int count() {
    return count(lines);
  }

  public double leftOver() {
    return bought() - needed;
  }

  /** How many of which, largest first; a number never parts from its kit at a line's end. */
  public Message said(UnitSystem units) {
    return lines.stream()
        .map(l -> one(l, units))
        .reduce((a, b) -> Message.of("work.kits.and", a, b))
        .orElse(Message.of("work.kits.none"));
  }

  private static Message one(Line l, UnitSystem units) {
    return Message.of(
        "work.kits.of",
        l.count(),
        QuantityFormat.volume(l.kit().mm3(), units).replace(' ', '\u00a0'));
  }

  /** What they cost, when every price is known. */
  public Figure<BigDecimal> price() {
    return Figure.all(
            lines.stream()
                .map(l -> l.kit().price().map(p -> p.multiply(BigDecimal.valueOf(l.count()))))
                .toList())
        .map(all -> all.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
  }
}
