package slabwright.work.handover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.site.Machine;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Kits;
import slabwright.work.prep.Bond;
import slabwright.work.prep.PrepStep;
import slabwright.work.step.ToolKind;
import slabwright.work.stop.JobStop;

/** What goes on the van. */
final class LoadList {
  private static final List<Message> SAFETY =
      List.of(
          Message.of("work.load-list.respirators-and-cartridges-as"),
          Message.of("work.load-list.gloves-that-stand-the-solvent"),
          Message.of("work.load-list.gas-meter-for-flammable-vapour"),
          Message.of("work.load-list.fire-extinguisher-closed-metal"),
          Message.of("work.load-list.barrier-tape-and-signs-keep"),
          Message.of("work.load-list.thermometer-for-surfaces-hygrometer"));

  /** Common practice, no source. */
  private static final List<Message> SPARES =
      List.of(
          Message.of("work.load-list.vacuum-hose-and-filter-grinder"),
          Message.of("work.load-list.roller-sleeve-and-frame-brush"),
          Message.of("work.load-list.mixing-pails-and-paddle-scale"));

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
        Message.of("work.load-list.load-list", plan.site().name()),
        List.of(plan.book().origin()),
        withStops(
            new HandoverDocument.Section(Message.of("work.load-list.machines-and-tools"), tools()),
            new HandoverDocument.Section(
                Message.of("work.load-list.diamonds-and-pads-each-with"), diamonds()),
            new HandoverDocument.Section(Message.of("work.load-list.products"), products()),
            new HandoverDocument.Section(
                Message.of("work.load-list.stencils-and-masking"), stencils()),
            new HandoverDocument.Section(
                Message.of("work.load-list.spares"),
                SPARES.stream().map(s -> HandoverDocument.Row.toTick(s, "")).toList()),
            new HandoverDocument.Section(
                Message.of("work.load-list.safety"),
                SAFETY.stream().map(s -> HandoverDocument.Row.toTick(s, "")).toList())),
        List.of());
  }

  /** First what must be settled before the van leaves, if anything was ever open. */
  private List<HandoverDocument.Section> withStops(HandoverDocument.Section... sections) {
    List<JobStop> stops = plan.areas().stream().flatMap(a -> a.stops().stream()).toList();
    List<HandoverDocument.Section> all = new ArrayList<>();
    if (!stops.isEmpty()) {
      all.add(StopRows.section(stops));
    }
    all.addAll(List.of(sections));
    return all;
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
                Message.of("work.load-list.vacuum-bags", a.name()),
                a.bags().text(String::valueOf)));
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
    Map<String, Set<Message>> bonds = new LinkedHashMap<>();
    for (AreaWorkPlan a : plan.areas()) {
      for (PrepStep s : a.prep().steps()) {
        Set<Message> known =
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
    bonds.forEach((grit, known) -> rows.add(HandoverDocument.Row.toTick(grit, all(known))));
    return rows;
  }

  private static Object all(Set<Message> bonds) {
    Optional<Message> all =
        bonds.stream().reduce((a, b) -> Message.of("work.load-list.this-and-that", a, b));
    return all.isPresent() ? all.get() : "";
  }

  private static Message bond(AreaWorkPlan a) {
    return Bond.words(a.prep().bond().bonds())
        .orElse(Message.of("work.load-list.bond-by-the-scratch-test"));
  }

  private List<HandoverDocument.Row> products() {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    for (AreaWorkPlan a : plan.areas()) {
      for (CoatPlan c : a.coats()) {
        rows.add(
            HandoverDocument.Row.toTick(
                Message.of("work.load-list.of-area", c.product().label(), a.name()),
                kits(c.kits())));
      }
      if (a.prep().filler().mm3() > 0) {
        Object label = fillerLabel();
        rows.add(
            HandoverDocument.Row.toTick(
                Message.of("work.load-list.of-area", label, a.name()),
                kits(a.prep().filler().kits())));
      }
    }
    return rows;
  }

  private Object fillerLabel() {
    Optional<Product> filler = plan.book().first(ProductKind.FILLER);
    return filler.isPresent() ? filler.get().label() : Message.of("work.load-list.filler");
  }

  private Message kits(Figure<Kits> kits) {
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
                Message.of("work.load-list.cut-stencil", i.name()),
                QuantityFormat.area(i.blank(), units)));
        rows.add(
            HandoverDocument.Row.toTick(
                Message.of("work.load-list.masking-tape-and-upright-masking", i.name()), ""));
        rows.add(
            HandoverDocument.Row.toTick(
                Message.of("work.load-list.masking-paper-round", i.name()),
                QuantityFormat.area(i.skirt(), units)));
      }
    }
    return rows;
  }
}
