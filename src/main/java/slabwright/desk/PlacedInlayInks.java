package slabwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.scene.SeamGrip;
import slabwright.drawing.Colour;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.figures.StencilInks;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;

/** The inks of inlays on the floor. */
final class PlacedInlayInks {
  /** Concrete under a graphic, where the table is dark. */
  private static final Colour PALE = Colour.hex("d9d6cf");

  /** A blank narrower than this on the screen is drawn in hairlines, mm: some 250 px. */
  private static final double SMALL = 66;

  /** One narrower than this shows no seams and no local blanks: its graphic would be lost, mm. */
  private static final double TINY = 20;

  /** Where names and sign lie clear of the graphic, mm on the site and on the screen. */
  private static final double BESIDE = 170;

  private static final double NAME = 4.4;
  private static final double SIGN = 5;

  private PlacedInlayInks() {}

  /**
   * What will be seen of them in the end: the dyed colours.
   *
   * @param onPale whether pale concrete is laid under them first
   */
  public static List<Ink> dyed(FloorArea area, SelectedAreaResults answers, boolean onPale) {
    List<Ink> inks = new ArrayList<>();
    for (Inlay i : area.inlays()) {
      Optional<ComputedInlay> a = answers.inlay(i.id()).filter(x -> x.plan().isPresent());
      if (a.isPresent()) {
        if (onPale) {
          inks.add(Fill.of(PALE, new Ring(a.get().blank(i))));
        }
        for (Stencil s : a.get().plan().orElseThrow().stencils().stencils()) {
          inks.add(new Fill(a.get().onSite(s.artwork(), i), colour(s.colour())));
        }
      } else {
        inks.addAll(unknown(i));
      }
    }
    return inks;
  }

  /** A ring stands in for an inlay that is not worked out yet. */
  private static List<Ink> unknown(Inlay i) {
    double r = i.width().mm() / 2;
    Vec m = i.middle().vec();
    Ring box = Ring.rectangle(m.x() - r, m.y() - r, m.x() + r, m.y() + r);
    return List.of(
        Stroke.rings(Pen.of(0.4, Palette.BLUE).dashed(1.5, 1), List.of(box)),
        Text.middle(m, i.name().isBlank() ? i.graphic() : i.name(), TextStyle.bold(2.6)));
  }

  private static Colour colour(String hex) {
    return hex.matches("#[0-9a-f]{6}") ? Colour.hex(hex.substring(1)) : Palette.BLUE;
  }

  /**
   * The film on its place: the blanks and their seams, finer while the graphic is small.
   *
   * @param mm site millimetres to one of screen paper
   */
  public static List<Ink> film(FloorArea area, SelectedAreaResults answers, double mm) {
    List<Ink> inks = new ArrayList<>();
    for (Inlay i : area.inlays()) {
      answers
          .inlay(i.id())
          .filter(a -> a.plan().isPresent())
          .ifPresent(a -> inks.addAll(film(a, i, mm)));
    }
    return inks;
  }

  private static List<Ink> film(ComputedInlay a, Inlay i, double mm) {
    InlayPlan plan = a.plan().orElseThrow();
    Affine map = a.toSite(i).orElse(Affine.IDENTITY);
    Optional<SeamGrip> moved = moved(a, i);
    List<Ink> flat = new ArrayList<>();
    double wide = plan.stencils().blank().width() / mm;
    if (wide < SMALL) {
      flat.addAll(StencilInks.smallBlank(plan, wide > TINY));
    } else {
      flat.addAll(StencilInks.blank(plan));
    }
    if (moved.isEmpty() && wide > TINY) {
      flat.addAll(wide < SMALL ? StencilInks.smallSeams(plan) : StencilInks.seams(plan));
    }
    List<Ink> inks = new ArrayList<>();
    flat.forEach(ink -> inks.add(ink.placed(new View(map))));
    moved.ifPresent(grip -> inks.add(seams(grip)));
    return inks;
  }

  /**
   * The skirt round the film, its panels' names, and which way it reads.
   *
   * @param mm site millimetres to one of screen paper
   */
  public static List<Ink> worked(FloorArea area, SelectedAreaResults answers, double mm) {
    List<Ink> inks = new ArrayList<>();
    for (Inlay i : area.inlays()) {
      answers
          .inlay(i.id())
          .filter(a -> a.plan().isPresent())
          .ifPresent(a -> inks.addAll(worked(a, i, mm)));
    }
    return inks;
  }

  private static List<Ink> worked(ComputedInlay a, Inlay i, double mm) {
    InlayPlan plan = a.plan().orElseThrow();
    Affine map = a.toSite(i).orElse(Affine.IDENTITY);
    List<Ink> inks = new ArrayList<>();
    double wide = plan.stencils().blank().width() / mm;
    List<Ink> skirt = wide < SMALL ? StencilInks.outerSkirt(plan) : StencilInks.skirt(plan);
    skirt.forEach(ink -> inks.add(ink.placed(new View(map))));
    if (wide > TINY) {
      plan.panels().ifPresent(p -> inks.addAll(names(p, map, mm)));
    }
    inks.add(reading(a.blank(i), i, mm));
    return inks;
  }

  /** Seams that were moved show where they are now; the rest follows when it is worked out. */
  private static Optional<SeamGrip> moved(ComputedInlay a, Inlay i) {
    return SeamGrip.of(a, i)
        .filter(
            g ->
                a.plan()
                    .flatMap(InlayPlan::panels)
                    .filter(p -> !g.seams().equals(SeamGrip.chosen(p)))
                    .isPresent());
  }

  private static Ink seams(SeamGrip grip) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < grip.seams().places().size(); i++) {
      lines.add(grip.line(i));
    }
    return Stroke.lines(StencilInks.seamPen(), lines);
  }

  private static List<Ink> names(PanelPlan p, Affine map, double mm) {
    List<Ink> inks = new ArrayList<>();
    double below = Math.max(BESIDE, NAME * 0.6 * mm);
    for (Panel panel : p.panels()) {
      Bounds b = panel.box();
      Vec at = map.apply(new Vec(b.middle().x(), b.maxY() + below));
      inks.add(new Symbol(Symbol.Kind.NUMBER, at, NAME, 0, Palette.INK, panel.name()));
    }
    return inks;
  }

  /** A needle at the blank's upper side, pointing the way the graphic's up points. */
  private static Ink reading(List<Vec> blank, Inlay i, double mm) {
    Vec top = blank.get(0).towards(blank.get(1), 0.5);
    Vec out = top.minus(i.middle().vec()).unit();
    Vec at = top.plus(out.times(Math.max(1.5 * BESIDE, SIGN * 0.6 * mm)));
    return Symbol.of(Symbol.Kind.NEEDLE, at, SIGN, Palette.INK)
        .turned(Math.toDegrees(out.angle()) - 90);
  }
}
