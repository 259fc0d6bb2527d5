package slabwright.work.handover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.site.Machine;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Kits;
import slabwright.work.prep.Bond;
import slabwright.work.prep.PrepStep;
import slabwright.work.step.ToolKind;

/** What goes on the van. */
final class LoadList {
  private static final List<String> SAFETY =
      List.of(
          "Respirators and cartridges as sheet 7 says",
          "Gloves that stand the solvent, eye and ear protection",
          "Gas meter for flammable vapour, bump-tested",
          "Fire extinguisher, closed metal can for rags, bonding wire",
          "Barrier tape and signs: keep off, no flames; first-aid kit",
          "Thermometer for surfaces, hygrometer, Mohs picks");

  /** Common practice, no source. */
  private static final List<String> SPARES =
      List.of(
          "Vacuum hose and filter, grinder belt or brushes, fuses, extension lead",
          "Roller sleeve and frame, brush, sprayer nozzle and jar",
          "Mixing pails and paddle, scale for two-part products");

  private final WorkPlan plan;
  private final UnitSystem units;

  private LoadList(WorkPlan plan) {
    this.plan = plan;
    this.units = plan.site().units();
  }

  public static HandoverDocument of(WorkPlan plan) {
    return new LoadList(plan).paper();
  }

  private HandoverDocument paper() {
    return new HandoverDocument(
        "Load list: " + plan.site().name(),
        List.of(plan.book().origin()),
        List.of(
            new HandoverDocument.Section("Machines and tools", tools()),
            new HandoverDocument.Section("Diamonds and pads, each with a spare set", diamonds()),
            new HandoverDocument.Section("Products", products()),
            new HandoverDocument.Section("Stencils and masking", stencils()),
            new HandoverDocument.Section(
                "Spares", SPARES.stream().map(s -> HandoverDocument.Row.toTick(s, "")).toList()),
            new HandoverDocument.Section(
                "Safety", SAFETY.stream().map(s -> HandoverDocument.Row.toTick(s, "")).toList())),
        List.of());
  }

  private List<HandoverDocument.Row> tools() {
    List<HandoverDocument.Row> rows = new ArrayList<>(machines());
    plan.book().tools().stream()
        .filter(t -> !t.is(ToolKind.FLOOR_GRINDER))
        .forEach(t -> rows.add(HandoverDocument.Row.toTick(t.name(), "")));
    for (AreaWorkPlan a : plan.areas()) {
      if (a.bags().maybe().filter(n -> n == 0).isEmpty()) {
        rows.add(
            HandoverDocument.Row.toTick(
                "Vacuum bags, " + a.name(), a.bags().text(String::valueOf)));
      }
    }
    return rows;
  }

  /** The same machine does several floors: by name, as many as the floor with most of them has. */
  private List<HandoverDocument.Row> machines() {
    Map<String, Long> most = new LinkedHashMap<>();
    for (AreaWorkPlan a : plan.areas()) {
      a.floor().area().machines().stream()
          .collect(Collectors.groupingBy(Machine::name, LinkedHashMap::new, Collectors.counting()))
          .forEach((name, count) -> most.merge(name, count, Math::max));
    }
    List<HandoverDocument.Row> rows = new ArrayList<>();
    most.forEach(
        (name, count) ->
            rows.addAll(
                Collections.nCopies(
                    Math.toIntExact(count), HandoverDocument.Row.toTick(name, ""))));
    return rows;
  }

  /**
   * Every pass of the plan with its tool; metal ones in the bond that the slab's reading asks for.
   */
  private List<HandoverDocument.Row> diamonds() {
    Map<String, Set<String>> bonds = new LinkedHashMap<>();
    for (AreaWorkPlan a : plan.areas()) {
      for (PrepStep s : a.prep().steps()) {
        Set<String> known =
            s.subject()
                .grit()
                .map(g -> bonds.computeIfAbsent(g, x -> new LinkedHashSet<>()))
                .orElseGet(LinkedHashSet::new);
        if (s.kind() == PrepStep.Kind.METAL_PASS) {
          known.add(bond(a));
        }
      }
    }
    List<HandoverDocument.Row> rows = new ArrayList<>();
    bonds.forEach(
        (grit, known) -> rows.add(HandoverDocument.Row.toTick(grit, String.join("; ", known))));
    return rows;
  }

  private static String bond(AreaWorkPlan a) {
    String bonds =
        a.prep().bond().bonds().stream().map(Bond::word).collect(Collectors.joining(" and "));
    return bonds.isEmpty() ? "bond by the scratch test" : bonds;
  }

  private List<HandoverDocument.Row> products() {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    for (AreaWorkPlan a : plan.areas()) {
      for (CoatPlan c : a.coats()) {
        rows.add(
            HandoverDocument.Row.toTick(c.product().label() + ", " + a.name(), kits(c.kits())));
      }
      if (a.prep().filler().mm3() > 0) {
        String label = plan.book().first(ProductKind.FILLER).map(p -> p.label()).orElse("Filler");
        rows.add(
            HandoverDocument.Row.toTick(label + ", " + a.name(), kits(a.prep().filler().kits())));
      }
    }
    return rows;
  }

  private String kits(Figure<Kits> kits) {
    return kits.text(
        k ->
            String.join(
                " + ",
                k.lines().stream()
                    .map(l -> l.count() + " x " + QuantityFormat.volume(l.kit().mm3(), units))
                    .toList()));
  }

  private List<HandoverDocument.Row> stencils() {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    for (AreaWorkPlan a : plan.areas()) {
      for (InlayTakeoff i : a.floor().inlays()) {
        rows.add(
            HandoverDocument.Row.toTick(
                "Cut stencil, " + i.name(), QuantityFormat.area(i.blank(), units)));
        rows.add(
            HandoverDocument.Row.toTick("Masking tape and upright masking for " + i.name(), ""));
        rows.add(
            HandoverDocument.Row.toTick(
                "Masking paper round " + i.name(), QuantityFormat.area(i.skirt(), units)));
      }
    }
    return rows;
  }
}
