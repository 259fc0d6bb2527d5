package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.panel.RegistrationTick;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * An inlay as inks in the blank's frame, x right, y down; the desk and the sheets draw the same.
 */
public final class StencilInks {
  /** Not red, which stops people: two panels meet here. */
  private static final Pen SEAM = Pen.of(0.4, Palette.PURPLE).dashed(2.2, 1.3);

  private static final Pen SKIRT = Pen.of(0.35, Palette.AMBER).dashed(0.7, 0.9);

  /** Half of a witness cross on paper, mm: smaller ones are lost on a seam's line. */
  private static final double LEAST_ARM = 1.6;

  private StencilInks() {}

  /** The dyed openings of all stencils in laying order. */
  public static List<Ink> openings(InlayPlan plan) {
    List<Ink> inks = new ArrayList<>();
    List<Stencil> stencils = plan.stencils().stencils();
    for (int i = 0; i < stencils.size(); i++) {
      inks.addAll(DyeStyle.of(stencils.get(i).colour(), i).on(stencils.get(i).openings()));
    }
    return inks;
  }

  /** The openings in flat colour, for a plan where the inlay is small. */
  public static List<Ink> flat(InlayPlan plan) {
    List<Ink> inks = new ArrayList<>();
    for (Stencil s : plan.stencils().stencils()) {
      inks.addAll(DyeStyle.flat(s.colour()).on(s.openings()));
    }
    return inks;
  }

  /** The blank's outline, with thinner ones of local blanks. */
  public static List<Ink> blank(InlayPlan plan) {
    List<Ink> inks = new ArrayList<>();
    List<Ring> local =
        plan.panels().stream()
            .flatMap(p -> p.local().values().stream())
            .flatMap(p -> p.blanks().stream())
            .map(StencilInks::ring)
            .toList();
    boolean all = plan.panels().filter(p -> p.panels().isEmpty()).isPresent(); // nothing lies on it
    Pen pen = all ? Pen.of(0.25, Palette.SOFT) : Pen.of(0.5, Palette.INK);
    inks.add(Stroke.rings(pen, List.of(ring(plan.stencils().blank()))));
    if (!local.isEmpty()) {
      inks.add(Stroke.rings(Pen.of(0.35, Palette.INK), local));
    }
    return inks;
  }

  /** The outlines of the vinyl that one stencil is cut out of. */
  public static List<Ink> blank(InlayPlan plan, Stencil stencil) {
    List<Bounds> blanks =
        plan.panels().map(p -> p.of(stencil).blanks()).orElse(List.of(plan.stencils().blank()));
    return List.of(
        Stroke.rings(Pen.of(0.5, Palette.INK), blanks.stream().map(StencilInks::ring).toList()));
  }

  /** The rectangle round the vinyl of one stencil. */
  public static Bounds around(InlayPlan plan, Stencil stencil) {
    return plan.panels().map(p -> p.of(stencil).blank()).orElse(plan.stencils().blank());
  }

  /** The seams of all stencils: a dashed line on each side of every lap. */
  public static List<Ink> seams(InlayPlan plan) {
    return seams(plan, plan.stencils().stencils());
  }

  /** The seams of some stencils. */
  public static List<Ink> seams(InlayPlan plan, List<Stencil> of) {
    List<Ink> inks = new ArrayList<>();
    plan.panels().ifPresent(p -> p.laps(of).forEach(s -> inks.addAll(lap(s.lap()))));
    return inks;
  }

  private static List<Ink> lap(Bounds b) {
    boolean upright = b.height() > b.width();
    Vec a = new Vec(b.minX(), b.minY());
    Vec d = new Vec(b.maxX(), b.maxY());
    Vec corner1 = upright ? new Vec(b.minX(), b.maxY()) : new Vec(b.maxX(), b.minY());
    Vec corner2 = upright ? new Vec(b.maxX(), b.minY()) : new Vec(b.minX(), b.maxY());
    return List.of(Stroke.lines(SEAM, List.of(Line.of(a, corner1), Line.of(corner2, d))));
  }

  /**
   * The witness crosses of these stencils, in true size where they are seen so, else larger.
   *
   * @param scale mm of paper to a mm of the graphic
   */
  public static List<Ink> witnesses(InlayPlan plan, List<Stencil> of, double scale) {
    List<Line> lines = new ArrayList<>();
    plan.panels()
        .ifPresent(
            p ->
                p.laps(of).stream()
                    .flatMap(s -> s.marks().stream())
                    .forEach(
                        m -> {
                          double arm = Math.max(m.arm(), LEAST_ARM / scale);
                          Vec x = new Vec(arm, 0);
                          Vec y = new Vec(0, arm);
                          lines.add(Line.of(m.at().minus(x), m.at().plus(x)));
                          lines.add(Line.of(m.at().minus(y), m.at().plus(y)));
                        }));
    return List.of(Stroke.lines(Pen.of(0.3, Palette.INK), lines));
  }

  /**
   * The registration ticks on film of these stencils, in true size, ringed so that they are seen.
   */
  public static List<Ink> ticks(InlayPlan plan, List<Stencil> of) {
    List<Ink> inks = new ArrayList<>();
    ticksOf(plan, of)
        .forEach(
            t -> {
              Vec x = new Vec(RegistrationTick.ARM, 0);
              Vec y = new Vec(0, RegistrationTick.ARM);
              inks.add(
                  Stroke.lines(
                      Pen.of(0.3, Palette.BLUE),
                      List.of(
                          Line.of(t.at().minus(x), t.at().plus(x)),
                          Line.of(t.at().minus(y), t.at().plus(y)))));
              inks.add(Symbol.of(Symbol.Kind.LOOK, t.at(), 2.2, Palette.BLUE));
            });
    return inks;
  }

  /** The ticks that the film of these stencils reaches. */
  public static List<RegistrationTick> ticksOf(InlayPlan plan, List<Stencil> of) {
    return plan.panels().stream()
        .flatMap(p -> p.cut(of).stream().flatMap(x -> p.ticks(x).stream()))
        .distinct()
        .toList();
  }

  /** The outer line of the paper skirt. */
  public static List<Ink> skirt(InlayPlan plan) {
    List<Ink> inks = new ArrayList<>();
    plan.masking()
        .ifPresent(
            m ->
                m.skirts().stream()
                    .distinct()
                    .forEach(s -> inks.add(Stroke.rings(SKIRT, s.rings()))));
    return inks;
  }

  public static Pen seamPen() {
    return SEAM;
  }

  public static Pen skirtPen() {
    return SKIRT;
  }

  public static Ring ring(Bounds b) {
    return Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
  }
}
