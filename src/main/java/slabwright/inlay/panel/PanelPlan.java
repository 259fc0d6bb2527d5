package slabwright.inlay.panel;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.units.SortedCopy;

/**
 * How the blank of an inlay is made of panels: the same for all stencils that lie on the whole
 * blank. A stencil that needs less has a plan of its own for its local blanks, in the same frame
 * and with the same registration ticks.
 *
 * @param blank from (0, 0) to its width and height
 * @param turn which way the strips run
 * @param seams places of the seams across the strips, in mm from the blank's left or top side
 * @param panels in the order of cutting along the roll, which is the order of their names
 * @param layingOrder names in the order of laying: the far side from the traffic first, so that
 *     each panel laps over the one laid before and no upper edge faces people's feet
 * @param laps the seams and inner joints with their witness marks
 * @param ticks the registration ticks of all panels, common to all stencils and the floor
 * @param rollLength film used for a stencil that opens on every panel, mm
 * @param waste share of that film's area outside the blank, 0 to 1
 * @param cost what the seams cost, see {@link SeamWeights}
 * @param findings what the person should know
 * @param blanks the pieces of vinyl that the panels make: the blank itself, or local blanks
 * @param local the plans of stencils with local blanks, by their layer; where all stencils have
 *     them, nothing is left to lie on the whole blank and it has no panels
 * @param savings what each of them spares
 */
@RecordBuilder
public record PanelPlan(
    Bounds blank,
    StripDirection turn,
    List<Double> seams,
    List<Panel> panels,
    List<String> layingOrder,
    List<Seam> laps,
    List<RegistrationTick> ticks,
    double rollLength,
    double waste,
    SeamCost cost,
    List<Finding> findings,
    List<Bounds> blanks,
    Map<Integer, PanelPlan> local,
    Map<Integer, Saving> savings)
    implements PanelPlanBuilder.With {
  /** What local blanks spare of one stencil, in mm of roll, mm² of film to lay and seams. */
  public record Saving(double roll, double film, int seams) {}

  /** A plan of one blank for all stencils. */
  public PanelPlan(
      Bounds blank,
      StripDirection turn,
      List<Double> seams,
      List<Panel> panels,
      List<String> layingOrder,
      List<Seam> laps,
      List<RegistrationTick> ticks,
      double rollLength,
      double waste,
      SeamCost cost,
      List<Finding> findings) {
    this(
        blank,
        turn,
        seams,
        panels,
        layingOrder,
        laps,
        ticks,
        rollLength,
        waste,
        cost,
        findings,
        List.of(blank),
        Map.of(),
        Map.of());
  }

  public PanelPlan {
    blanks = List.copyOf(blanks);
    local = SortedCopy.of(local);
    savings = SortedCopy.of(savings);
    seams = List.copyOf(seams);
    panels = List.copyOf(panels);
    layingOrder = List.copyOf(layingOrder);
    laps = List.copyOf(laps);
    ticks = List.copyOf(ticks);
    findings = List.copyOf(findings);
  }

  /** The plan that this stencil is cut by: its own where it has local blanks. */
  public PanelPlan of(Stencil stencil) {
    return local.getOrDefault(stencil.layer(), this);
  }

  /** Whether this stencil lies on blanks of its own. */
  public boolean isLocal(Stencil stencil) {
    return local.containsKey(stencil.layer());
  }

  /** Whether it is made of pieces that don't touch, so that no edge runs round the whole. */
  public boolean isApart() {
    return blanks.size() > 1;
  }

  /** Area of the vinyl that this stencil is cut out of, mm². */
  public double blankArea(Stencil stencil) {
    return of(stencil).blanks.stream().mapToDouble(b -> b.width() * b.height()).sum();
  }

  /** Area of all panels that are cut for this stencil, overlaps included, mm². */
  public double filmArea(Stencil stencil) {
    return cut(stencil).stream().mapToDouble(p -> p.box().width() * p.box().height()).sum();
  }

  /** What a stencil's local blanks spare against the panels of the whole blank. */
  public Optional<Saving> saving(Stencil stencil) {
    return Optional.ofNullable(savings.get(stencil.layer()));
  }

  Saving against(PanelPlan own, Stencil stencil) {
    return new Saving(
        rollLength(stencil) - own.rollLength,
        filmArea(stencil) - own.filmArea(stencil),
        laps.size() - own.laps.size());
  }

  /** Which way the strip runs that a panel was cut from. */
  public StripDirection turn(Panel panel) {
    return local.values().stream()
        .filter(p -> p.panels.contains(panel))
        .findFirst()
        .map(PanelPlan::turn)
        .orElse(turn);
  }

  /** All panels there are, those of the whole blank first; each name is used once. */
  public List<Panel> all() {
    List<Panel> every = new ArrayList<>(panels);
    local.keySet().stream().sorted().forEach(k -> every.addAll(local.get(k).panels));
    return every;
  }

  /** The panels that are cut for any of these stencils, each once. */
  public List<Panel> cut(Collection<Stencil> stencils) {
    Set<Panel> any = new HashSet<>();
    stencils.forEach(s -> any.addAll(cut(s)));
    return all().stream().filter(any::contains).toList();
  }

  /** The laps that are laid for any of these stencils. */
  public List<Seam> laps(Collection<Stencil> stencils) {
    List<Seam> every = new ArrayList<>();
    stencils.stream().map(this::of).distinct().forEach(p -> every.addAll(p.laps));
    return every;
  }

  /** Without panels of the whole blank: every stencil has blanks of its own. */
  PanelPlan withoutPanels() {
    return with(
        plan ->
            plan.seams(List.of())
                .panels(List.of())
                .layingOrder(List.of())
                .laps(List.of())
                .rollLength(0)
                .waste(0)
                .cost(SeamCost.NONE)
                .blanks(List.of()));
  }

  /** The panels that have an opening of this stencil; the others are not cut for it. */
  public List<Panel> cut(Stencil stencil) {
    return of(stencil).panels.stream().filter(p -> p.opens(stencil)).toList();
  }

  /** Film used for this stencil, mm of roll. */
  public double rollLength(Stencil stencil) {
    if (isLocal(stencil)) {
      return of(stencil).rollLength;
    }
    List<Panel> cut = cut(stencil);
    double spared =
        panels.stream().filter(p -> !cut.contains(p)).mapToDouble(p -> turn.along(p.box())).sum();
    return Math.max(0, rollLength - spared);
  }

  /** Film used for all these stencils, mm of roll. */
  public double rollLength(Collection<Stencil> stencils) {
    return stencils.stream().mapToDouble(this::rollLength).sum();
  }

  /** Share of the film of all these stencils that is in none of their blanks, 0 to 1. */
  public double waste(Collection<Stencil> stencils) {
    if (local.isEmpty()) {
      return waste;
    }
    double wasted = stencils.stream().mapToDouble(s -> of(s).waste * rollLength(s)).sum();
    return wasted / Math.max(1, rollLength(stencils));
  }

  /** The registration ticks that lie on a panel. */
  public List<RegistrationTick> ticks(Panel panel) {
    return RegistrationPlacer.on(panel, ticks);
  }
}
