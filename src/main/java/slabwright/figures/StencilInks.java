package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * An inlay as inks in the blank's frame, x right, y down; the desk and the sheets draw the same.
 */
public final class StencilInks {
  /** Not red, which stops people: two panels meet here. */
  private static final Pen SEAM = Pen.of(0.4, Palette.PURPLE).dashed(2.2, 1.3);

  private static final Pen SEAM_SMALL = Pen.of(0.16, Palette.PURPLE).dashed(1.1, 1.1);
  private static final Pen LOCAL_SMALL = Pen.of(0.12, Palette.RULE);

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
    List<Ring> local = local(plan);
    boolean all = plan.panels().filter(p -> p.panels().isEmpty()).isPresent(); // nothing lies on it
    Pen pen = all ? Pen.of(0.25, Palette.SOFT) : Pen.of(0.5, Palette.INK);
    inks.add(Stroke.rings(pen, List.of(ring(plan.stencils().blank()))));
    if (!local.isEmpty()) {
      inks.add(Stroke.rings(Pen.of(0.35, Palette.INK), local));
    }
    return inks;
  }

  /**
   * The blank in hairlines, for a graphic shown so small that the usual lines would hide it.
   *
   * @param withLocal whether local blanks are drawn too
   */
  public static List<Ink> smallBlank(InlayPlan plan, boolean withLocal) {
    List<Ink> inks = new ArrayList<>();
    List<Ring> local = local(plan);
    if (withLocal && !local.isEmpty()) {
      inks.add(Stroke.rings(LOCAL_SMALL, local));
    }
    inks.add(Stroke.rings(Pen.of(0.25, Palette.INK), List.of(ring(plan.stencils().blank()))));
    return inks;
  }

  private static List<Ring> local(InlayPlan plan) {
    return plan.panels().stream()
        .flatMap(p -> p.local().values().stream())
        .flatMap(p -> p.blanks().stream())
        .map(StencilInks::ring)
        .toList();
  }

  /** The seams of a graphic shown so small that the two sides of a lap are one line. */
  public static List<Ink> smallSeams(InlayPlan plan) {
    List<Line> seams =
        plan.panels().stream()
            .flatMap(p -> p.laps(plan.stencils().stencils()).stream())
            .map(s -> middle(s.lap()))
            .toList();
    return seams.isEmpty() ? List.of() : List.of(Stroke.lines(SEAM_SMALL, seams));
  }

  private static Line middle(Bounds lap) {
    Vec m = lap.middle();
    return lap.height() > lap.width()
        ? Line.of(new Vec(m.x(), lap.minY()), new Vec(m.x(), lap.maxY()))
        : Line.of(new Vec(lap.minX(), m.y()), new Vec(lap.maxX(), m.y()));
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
    return skirts(plan).map(s -> (Ink) Stroke.rings(SKIRT, s.rings())).toList();
  }

  /** How far the skirts reach beyond the whole blank, where nothing of the graphic is. */
  public static List<Ink> outerSkirt(InlayPlan plan) {
    return plan.masking().stream()
        .filter(m -> !m.skirt().isEmpty())
        .map(m -> (Ink) Stroke.rings(SKIRT, m.skirt().rings()))
        .toList();
  }

  private static Stream<Region> skirts(InlayPlan plan) {
    return plan.masking().stream().flatMap(m -> m.skirts().stream()).distinct();
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
