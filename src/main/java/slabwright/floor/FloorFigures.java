package slabwright.floor;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import slabwright.site.EdgeClass;
import slabwright.units.SortedCopy;

/**
 * The figures of a floor that follow the hand. Areas in mm², lengths in mm.
 *
 * @param net area of the net floor
 * @param edges length of its edges by class; a class it has none of is left out
 * @param machine area that the machines grind with the trenches as they lie
 * @param hand area that is left to hand tools
 */
public record FloorFigures(double net, Map<EdgeClass, Double> edges, double machine, double hand) {
  public FloorFigures {
    edges = SortedCopy.of(edges);
  }

  /** Those of a take-off that has been worked out. */
  public static FloorFigures of(FloorTakeoff t) {
    return of(t.net().area(), t.edges(), t.asFound());
  }

  static FloorFigures of(double net, List<Edge> edges, GrindingSplit asFound) {
    Map<EdgeClass, Double> lengths = new EnumMap<>(EdgeClass.class);
    edges.forEach(e -> lengths.merge(e.kind(), e.length(), Double::sum));
    return new FloorFigures(net, lengths, asFound.machine().area(), asFound.hand().area());
  }

  /** These figures where one part of the floor changed from {@code before} to {@code after}. */
  FloorFigures changed(FloorFigures before, FloorFigures after) {
    Map<EdgeClass, Double> sums = new EnumMap<>(EdgeClass.class);
    sums.putAll(edges);
    before.edges.forEach((k, v) -> sums.merge(k, -v, Double::sum));
    after.edges.forEach((k, v) -> sums.merge(k, v, Double::sum));
    return new FloorFigures(
        net - before.net + after.net,
        sums,
        machine - before.machine + after.machine,
        hand - before.hand + after.hand);
  }

  /** Length of all edges. */
  public double edgeLength() {
    return edges.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Length painted by brush or small roller before rolling. */
  public double cutIn() {
    return edges.entrySet().stream()
        .filter(e -> !FloorTakeoff.NOT_CUT_IN.contains(e.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }
}
