package slabwright.desk.model.compute;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.floor.Edge;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.ComputedInlay;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.EdgeClass;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.units.UnitSystem;

/**
 * All that the inlays of a floor area depend on: themselves, where people come from, and the floor
 * that paper and mist reach. What changes elsewhere on the floor leaves them as they are.
 *
 * @param near the floor around them
 * @param upright edges that stand there
 */
record InlayBasis(
    List<Inlay> inlays,
    UnitSystem units,
    Path folder,
    List<OutlinePiece> outline,
    List<Doorway> wayIns,
    List<Mark> trims,
    Region near,
    Set<StandingEdge> upright) {
  /** Farther than any skirt of paper or overspray, mm. */
  private static final double REACH = 3000;

  /** An upright edge near the inlays. */
  record StandingEdge(EdgeClass kind, Line line) {}

  /** Empty while an inlay has no stencil that says how far it reaches. */
  static Optional<InlayBasis> of(
      FloorTakeoff t, UnitSystem units, Path folder, List<ComputedInlay> known) {
    FloorArea area = t.area();
    Bounds all = Bounds.EMPTY;
    for (Inlay i : area.inlays()) {
      Optional<ComputedInlay> one = known.stream().filter(k -> k.inlay().equals(i)).findFirst();
      List<Vec> blank = one.map(k -> k.blank(i)).orElse(List.of());
      if (blank.isEmpty()) {
        return Optional.empty();
      }
      all = all.including(Bounds.of(blank));
    }
    Region box = Region.rectangle(all.grown(REACH));
    return Optional.of(
        new InlayBasis(
            area.inlays(),
            units,
            folder,
            area.outline(),
            area.doorways().stream().filter(Doorway::wayIn).toList(),
            area.marks().stream().filter(m -> m.kind() instanceof MarkKind.MaskedTrim).toList(),
            t.net().intersect(box),
            standing(t, box)));
  }

  private static Set<StandingEdge> standing(FloorTakeoff t, Region box) {
    Set<StandingEdge> all = new HashSet<>();
    for (Edge e : t.edges()) {
      e.lines().stream().filter(box::meets).forEach(l -> all.add(new StandingEdge(e.kind(), l)));
    }
    return all;
  }
}
