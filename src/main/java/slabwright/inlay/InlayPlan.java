package slabwright.inlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.masking.FloorAround;
import slabwright.inlay.masking.Masking;
import slabwright.inlay.panel.LocalBlankPlanner;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.SeamCost;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.inlay.stencil.TiePlan;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.site.StencilSpec;

/**
 * All that is computed of one inlay. Lengths in mm, areas in mm².
 *
 * <p>Frame: millimetres from the blank's top-left corner as read, x right, y down.
 *
 * @param stencils in laying order, with blank, openings and masks
 * @param openings of all stencils laid over each other
 * @param panels how the blank is cut from the roll; empty when it cannot be
 * @param bestSeams what the best seams would cost, when a person set other ones
 * @param masking empty when there are no panels
 * @param toSite from the blank to the site, when the inlay is placed
 * @param findings what the person should know, with places
 */
public record InlayPlan(
    StencilSet stencils,
    Region openings,
    Optional<PanelPlan> panels,
    Optional<SeamCost> bestSeams,
    Optional<Masking> masking,
    Optional<Affine> toSite,
    List<Finding> findings) {
  public InlayPlan {
    findings = List.copyOf(findings);
  }

  /** Plans an inlay; whatever stands against it is among the findings, never thrown. */
  public static InlayPlan of(DyedGraphic graphic, StencilSpec spec, InlayContext context) {
    InlayParameters rules = InlayParameters.of(spec, context);
    StencilSet whole = stencils(graphic, spec, rules);
    List<Finding> findings = new ArrayList<>();
    graphic.findings().forEach(f -> findings.add(f.moved(whole.fromGraphic())));
    findings.addAll(whole.findings());
    whole.stencils().forEach(s -> findings.addAll(rules.check().of(s)));
    Optional<SeamPlanner> planner = planner(whole, rules, findings);
    Bounds painted = inBlank(graphic.painted(), whole);
    Optional<LocalBlankPlanner.Planned> planned = planner.map(p -> rules.panels(whole, p, painted));
    StencilSet set = planned.map(LocalBlankPlanner.Planned::set).orElse(whole);
    Optional<PanelPlan> panels = planned.map(LocalBlankPlanner.Planned::panels);
    panels.ifPresent(p -> findings.addAll(p.findings()));
    Optional<Affine> toSite = context.placed().map(p -> p.placement().toSite(painted));
    Optional<Masking> masking = panels.map(p -> masking(set, p, rules, context, toSite));
    Optional<SeamCost> best =
        spec.changes().seams().flatMap(hand -> planner.map(p -> p.best().cost()));
    return new InlayPlan(set, set.openings(), panels, best, masking, toSite, findings);
  }

  private static StencilSet stencils(DyedGraphic graphic, StencilSpec spec, InlayParameters rules) {
    StencilSet set = StencilSet.of(graphic.layers(), rules.stencil());
    return spec.ties() ? TiePlan.in(set, rules.tieWidth()).set() : set;
  }

  private static Optional<SeamPlanner> planner(
      StencilSet set, InlayParameters rules, List<Finding> findings) {
    List<Finding> refusals = SeamPlanner.refusals(rules.panel());
    findings.addAll(refusals);
    if (set.blank().isEmpty() || !refusals.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new SeamPlanner(set, rules.panel()));
  }

  /** What seams cost at other places; empty when there are no panels. */
  public Optional<SeamPlanner> seamPlanner(StencilSpec spec) {
    PanelParameters rules = InlayParameters.of(spec, InlayContext.graphicAlone()).panel();
    return panels.map(p -> new SeamPlanner(stencils, rules));
  }

  private static Masking masking(
      StencilSet set,
      PanelPlan panels,
      InlayParameters rules,
      InlayContext context,
      Optional<Affine> toSite) {
    if (toSite.isEmpty()) {
      return Masking.of(set, panels, rules.masking());
    }
    FloorAround around = context.placed().orElseThrow().floor().map(toSite.get().inverse());
    return Masking.of(set, panels, rules.masking(), around);
  }

  private static Bounds inBlank(Bounds painted, StencilSet set) {
    return new Bounds(
        painted.minX() - set.origin().x(),
        painted.minY() - set.origin().y(),
        painted.maxX() - set.origin().x(),
        painted.maxY() - set.origin().y());
  }

  /** Area of all openings laid over each other. */
  public double openingArea() {
    return openings.area();
  }

  /** Area of the blank. */
  public double blankArea() {
    return stencils.blank().width() * stencils.blank().height();
  }

  /** Area of the vinyl that one stencil is cut out of: the blank, or its local blanks. */
  public double blankArea(Stencil stencil) {
    return panels.map(p -> p.blankArea(stencil)).orElseGet(this::blankArea);
  }

  /** Area of paper around the vinyl of one stencil. */
  public double skirtArea(Stencil stencil) {
    return masking.map(m -> m.skirt(stencil).area()).orElse(0.0);
  }

  /** The blank less all openings: with one stencil, its mask. */
  public double maskArea() {
    return blankArea() - openingArea();
  }

  /** Length of cut, all stencils together, panel outlines not. */
  public double cutLength() {
    return stencils.cutLength();
  }

  /** Number of loose pieces, all stencils together. */
  public int loosePieces() {
    return stencils.looseCount();
  }

  /** Film used, all stencils together. */
  public double rollLength() {
    return panels.map(p -> p.rollLength(stencils.stencils())).orElse(0.0);
  }

  /** Pieces of film that are cut, all stencils together; 0 where no panels were found. */
  public int panelsCut() {
    return panels
        .map(p -> stencils.stencils().stream().mapToInt(s -> p.cut(s).size()).sum())
        .orElse(0);
  }

  /** Area to press down, all stencils together. */
  public double pressBandArea() {
    return masking.map(Masking::pressBandArea).orElse(0.0);
  }

  /** Area of paper around the vinyl of the stencil that asks for most. */
  public double skirtArea() {
    return stencils.stencils().stream().mapToDouble(this::skirtArea).max().orElse(0.0);
  }

  /** Share of the film that is in no blank, 0 to 1. */
  public double waste() {
    return panels.map(p -> p.waste(stencils.stencils())).orElse(0.0);
  }

  /** The stencil of a colour. */
  public Optional<Stencil> stencil(String colour) {
    return stencils.stencils().stream().filter(s -> s.colour().equals(colour)).findFirst();
  }
}
