package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import slabwright.inlay.stencil.FindingMeasurement.Size;
import slabwright.shape.Vec;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** Findings of one kind told in one sentence, with how many there are and how large they are. */
public final class FindingGroups {
  private final UnitSystem units;

  private FindingGroups(UnitSystem units) {
    this.units = units;
  }

  /**
   * Findings of one kind.
   *
   * @param sentence what was found, with the number and the range of sizes
   * @param count how many there are
   * @param places those whose place is known, at most {@code count}
   * @param fix what would mend them
   */
  public record Group(
      Finding.Weight weight, Message sentence, int count, List<Vec> places, Optional<FixKind> fix) {
    public Group {
      places = List.copyOf(places);
    }
  }

  /**
   * The findings by kind, each kind where its first one stood.
   *
   * @param units in which sizes are written
   */
  public static List<Group> of(List<Finding> findings, UnitSystem units) {
    Map<Object, List<Finding>> kinds = new LinkedHashMap<>();
    for (Finding f : findings) {
      Object kind = f.seen().<Object>map(FindingMeasurement::kind).orElse(f.message());
      kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(f);
    }
    FindingGroups words = new FindingGroups(units);
    return kinds.values().stream().map(words::group).toList();
  }

  private Group group(List<Finding> alike) {
    Finding first = alike.get(0);
    List<Size> sizes =
        alike.stream().flatMap(f -> f.seen().stream()).flatMap(s -> s.sizes().stream()).toList();
    int count = Math.max(alike.size(), sizes.size());
    Message sentence = first.message();
    if (count > 1) {
      sentence =
          first
              .seen()
              .map(s -> many(s, sizes))
              .orElse(Message.of("inlay.finding-groups.places", first.message(), count));
    }
    List<Vec> places = alike.stream().flatMap(f -> f.at().stream()).toList();
    return new Group(first.weight(), sentence, count, places, first.fix());
  }

  private Message many(FindingMeasurement seen, List<Size> sizes) {
    int n = sizes.size();
    String limit = length(seen.limit());
    return switch (seen.kind()) {
      case THIN_MASK -> Message.of("inlay.finding-groups.masks-thin", n, lengths(sizes), limit);
      case NARROW_OPENING ->
          Message.of("inlay.finding-groups.openings-narrow", n, lengths(sizes), limit);
      case SMALL_LOOSE_PIECE -> Message.of("inlay.finding-groups.loose-pieces", n, areas(sizes));
      case SCRAP -> Message.of("inlay.finding-groups.scraps", n, areas(sizes));
      case NEEDLE_OF_VINYL ->
          Message.of(
              "inlay.finding-groups.needles-of-vinyl", n, degrees(sizes), limit, lengths(sizes));
      case NEEDLE_OF_OPENING ->
          Message.of(
              "inlay.finding-groups.needles-of-opening", n, degrees(sizes), limit, lengths(sizes));
    };
  }

  private static Object degrees(List<Size> sizes) {
    return range(sizes.stream().mapToDouble(Size::degrees), "%.0f°"::formatted);
  }

  private Object lengths(List<Size> sizes) {
    return range(sizes.stream().mapToDouble(Size::amount), this::length);
  }

  private Object areas(List<Size> sizes) {
    return range(
        sizes.stream().mapToDouble(Size::amount), area -> QuantityFormat.smallArea(area, units));
  }

  private String length(double mm) {
    return LengthFormat.fine(mm, units);
  }

  /** One figure when all are written alike. */
  private static Object range(DoubleStream amounts, DoubleFunction<String> show) {
    var all = amounts.summaryStatistics();
    String least = show.apply(all.getMin());
    String most = show.apply(all.getMax());
    return least.equals(most) ? least : Message.of("inlay.finding-groups.range", least, most);
  }
}
