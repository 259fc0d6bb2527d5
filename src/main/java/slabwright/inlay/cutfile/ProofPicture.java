package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Dimension;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Seam;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** The picture of a stencil on its proof page. */
final class ProofPicture {
  /** The one shading that means weeded. */
  static final FillStyle SHADE =
      new FillStyle(
          Palette.GREY.mixed(Palette.WHITE, 0.3), HatchPattern.RISING, Palette.SOFT, 1.8, 0.3);

  private static final double SPACE = 16;
  private static final double RING = 2.2;
  private static final double NAME_SHARE = 0.35;

  private final Stencil stencil;
  private final PanelPlan plan;
  private final List<Region> staying;
  private final String check;
  private final String top;
  private final View view;
  private final double denominator;
  private final List<Ink> inks = new ArrayList<>();

  ProofPicture(
      Stencil stencil,
      PanelPlan plan,
      List<Region> staying,
      Bounds box,
      String check,
      Function<Message, String> words) {
    this.staying = staying;
    this.stencil = stencil;
    this.plan = plan;
    this.check = check;
    this.top = words.apply(Message.of("inlay.proof-picture.top"));
    Bounds inner = new Bounds(box.minX(), box.minY() + SPACE, box.maxX(), box.maxY() - SPACE / 2);
    Bounds blank = plan.blank();
    denominator =
        Math.max(
            1, Math.ceil(Math.max(blank.width() / inner.width(), blank.height() / inner.height())));
    this.view = View.yDown(denominator, blank.middle(), inner.middle());
  }

  /** The picture's scale is one to this whole number. */
  double denominator() {
    return denominator;
  }

  /** What is under everything: the white film. */
  List<Ink> film() {
    return placed(plan.blanks().stream().map(b -> Fill.of(Palette.WHITE, b)).toList());
  }

  /** The shading that means weeded. */
  List<Ink> weeded() {
    return placed(SHADE.on(stencil.openings()));
  }

  /** The film's edge. */
  List<Ink> edge() {
    return placed(
        List.of(
            Stroke.rings(
                Pen.of(0.5, Palette.INK), plan.blanks().stream().map(ProofPicture::box).toList())));
  }

  /** What is to be read and never cut: seams, panel letters, rings, the dimension, the arrow. */
  List<Ink> notes() {
    plan.laps().forEach(this::lap);
    plan.panels().forEach(this::name);
    staying.forEach(p -> inks.add(ring(p.labelPoint(), 1 / view.scale())));
    check(plan.panels().get(0).box());
    up(plan.blank());
    return placed(inks);
  }

  private List<Ink> placed(List<? extends Ink> of) {
    return view.place(Drawing.of(CoordinateFrame.GRAPHIC, of)).inks();
  }

  private void lap(Seam seam) {
    inks.add(Stroke.rings(Pen.of(0.3, Palette.RED).dashed(2, 1.2), List.of(box(seam.lap()))));
  }

  /** The name stands outside the graphic, near the panel's own bottom left corner. */
  private void name(Panel panel) {
    double off = 4 / view.scale();
    Vec at = new Vec(panel.box().minX() + off, panel.box().maxY() - off / 3);
    double room = Math.min(panel.box().width(), panel.box().height()) * view.scale();
    double high = Math.min(4, NAME_SHARE * room);
    inks.add(Text.start(at, panel.name(), TextStyle.bold(high).in(Palette.RED)));
  }

  /** The ring that means: cut all round, and stays. */
  static Ink ring(Vec middle, double mm) {
    List<Vec> round = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      double a = Math.PI * i / 12;
      round.add(middle.plus(new Vec(Math.cos(a), Math.sin(a)).times(RING * mm)));
    }
    return Stroke.rings(Pen.of(0.5, Palette.BLUE), List.of(new Ring(round)));
  }

  private void check(Bounds panel) {
    Vec from = new Vec(panel.minX(), panel.minY());
    Vec to = new Vec(panel.maxX(), panel.minY());
    inks.add(new Dimension(from, to, 7, check, TextStyle.plain(3.2)));
  }

  /** An arrow beside the blank that points to its top. */
  private void up(Bounds b) {
    double mm = 1 / view.scale();
    double x = b.minX() - 5 * mm;
    double y = b.middle().y();
    Pen pen = Pen.of(0.6, Palette.INK);
    Vec tip = new Vec(x, y - 10 * mm);
    inks.add(Stroke.line(pen, new Vec(x, y + 10 * mm), tip));
    inks.add(
        Stroke.line(
            pen, tip.plus(new Vec(-2 * mm, 3 * mm)), tip, tip.plus(new Vec(2 * mm, 3 * mm))));
    inks.add(Text.middle(new Vec(x, y - 12 * mm), top, TextStyle.plain(3.2)));
  }

  private static Ring box(Bounds b) {
    return Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
  }
}
