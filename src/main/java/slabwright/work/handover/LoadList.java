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
import java.util.stream.Stream;
import slabwright.site.Machine;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.coat.Kits;
import slabwright.work.prep.Bond;
import slabwright.work.prep.PrepStep;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.ToolKind;
import slabwright.work.stop.JobStop;

/** What goes on the van. */
final class LoadList {
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
            new HandoverDocument.Section(Message.of("work.load-list.used-up"), consumables()),
            new HandoverDocument.Section(Message.of("work.load-list.spares"), spares()),
            new HandoverDocument.Section(Message.of("work.load-list.safety"), safety())),
        List.of());
  }

  /** First what must be settled before the van leaves, if anything was ever open. */
  private List<HandoverDocument.Section> withStops(HandoverDocument.Section... sections) {
    List<JobStop> stops = plan.areas().stream().flatMap(a -> a.stops().stream()).toList();
    List<HandoverDocument.Section> all = new ArrayList<>();
    if (!stops.isEmpty()) {
      all.add(StopRows.section(stops));
    }
    Stream.of(sections).filter(s -> !s.rows().isEmpty()).forEach(all::add);
    return all;
  }

  private List<HandoverDocument.Row> tools() {
    ToolNeeds needs = new ToolNeeds(plan);
    List<HandoverDocument.Row> rows = new ArrayList<>(machines());
    boolean machineOnPlan = !rows.isEmpty();
    needs.pieces().stream()
        .filter(t -> !(machineOnPlan && t.kind() == ToolKind.FLOOR_GRINDER))
        .forEach(t -> rows.add(HandoverDocument.Row.toTick(t.called(), "")));
    needs.missing().stream()
        .filter(k -> !(machineOnPlan && k == ToolKind.FLOOR_GRINDER))
        .forEach(
            k ->
                rows.add(
                    HandoverDocument.Row.toTick(
                        Message.of("work.cost-line-builder.a-tool", k.label()),
                        Message.of("work.load-list.none-in-the-book"))));
    rows.addAll(new SolventGear(plan).fans());
    rollers().ifPresent(rows::add);
    return rows;
  }

  /** What sleeves are drawn on and rolled out of: common practice, no source. */
  private Optional<HandoverDocument.Row> rollers() {
    return ConsumableFinder.of(plan).stream()
        .filter(c -> c.kind() == Consumable.Kind.ROLLER_SLEEVES)
        .findFirst()
        .map(c -> HandoverDocument.Row.toTick(Message.of("work.load-list.rollers", rolling()), ""));
  }

  /** The most who lay one coat at once; 1 where no step is planned. */
  private int rolling() {
    return plan.outlook().order().maybe().stream()
        .flatMap(d -> d.steps().stream())
        .filter(s -> s.task().type().kind() == StepKind.COAT)
        .mapToInt(s -> s.who().persons().size())
        .max()
        .orElse(1);
  }

  /** What is used up and stands in no other list. */
  private List<HandoverDocument.Row> consumables() {
    return ConsumableFinder.of(plan).stream()
        .filter(c -> c.kind().isLoadedWithTheUsedUp())
        .map(
            c ->
                HandoverDocument.Row.toTick(
                    c.what(), c.count().text(n -> n.in(units).loaded().text())))
        .toList();
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
    if (ConsumableFinder.of(plan).stream().anyMatch(c -> c.kind() == Consumable.Kind.CUP_WHEELS)) {
      tick(rows, Message.of("work.load-list.cup-wheels"));
    }
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
    return BuyList.of(plan).stream()
        .map(b -> HandoverDocument.Row.toTick(b.name(), kits(b.kits())))
        .toList();
  }

  private Message kits(Figure<Kits> kits) {
    return kits.text(k -> k.said(units));
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
      }
    }
    if (!rows.isEmpty()) {
      tick(rows, Message.of("work.load-list.setting-out"));
    }
    return rows;
  }

  /** Common practice, no source; only beside the work that breaks them. */
  private List<HandoverDocument.Row> spares() {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    if (!diamonds().isEmpty() || uses(ToolKind.VACUUM)) {
      tick(rows, Message.of("work.load-list.vacuum-hose-and-filter-grinder"));
    }
    if (uses(ToolKind.SPRAYER)) {
      tick(rows, Message.of("work.load-list.sprayer-nozzle-and-jar"));
    }
    if (plan.areas().stream()
            .flatMap(a -> a.coats().stream())
            .anyMatch(c -> c.product().mixing().twoPart().maybe().orElse(false))
        || plan.areas().stream()
            .flatMap(a -> a.prep().mixing().stream())
            .anyMatch(m -> m.sets() && !m.nozzle())) {
      tick(rows, Message.of("work.load-list.mixing-paddle-and-scale"));
    }
    MixingNozzles.of(plan).ifPresent(n -> tick(rows, n));
    return rows;
  }

  private boolean uses(ToolKind kind) {
    return new ToolNeeds(plan).kinds().map(k -> k.contains(kind)).orElse(true);
  }

  private List<HandoverDocument.Row> safety() {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    boolean solvent =
        plan.tasks()
            .maybe()
            .map(t -> t.stream().anyMatch(s -> s.type().air() instanceof AirEffect.Vapour))
            .orElse(true);
    boolean dust =
        plan.tasks()
            .maybe()
            .map(t -> t.stream().anyMatch(s -> s.type().kind().grindsConcrete()))
            .orElse(true);
    if (dust) {
      tick(rows, Message.of("work.load-list.half-masks", people()));
    }
    if (solvent) {
      tick(rows, Message.of("work.load-list.respirators-and-cartridges-as"));
    }
    tick(
        rows,
        solvent
            ? Message.of("work.load-list.gloves-that-stand-the-solvent")
            : Message.of("work.load-list.gloves-eyes-and-ears"));
    if (solvent) {
      rows.addAll(new SolventGear(plan).rows());
    }
    tick(
        rows,
        solvent
            ? Message.of("work.load-list.barrier-tape-and-signs-keep")
            : Message.of("work.load-list.barrier-tape-and-first-aid"));
    tick(rows, Message.of("work.load-list.thermometer-for-surfaces-hygrometer"));
    return rows;
  }

  /** Everybody changes a bag or a filter at some time. */
  private int people() {
    return plan.days().maybe().map(d -> d.hours().people()).orElse(1);
  }

  private static void tick(List<HandoverDocument.Row> rows, Message what) {
    rows.add(HandoverDocument.Row.toTick(what, ""));
  }
}
