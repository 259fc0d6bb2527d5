package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.drawing.paint.PdfFile;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/**
 * One page for the sign shop that says, in words and in a picture, what of a stencil is weeded and
 * what is kept, with the finished size, the way it reads and one length to check with a ruler.
 */
final class ProofPage {
  private static final double EDGE = 14;
  private static final double PICTURE_TOP = 70;
  private static final double LINE = 4.6;
  private static final double ROW_GAP = 1.6;
  private static final double LABELS = 40;
  private static final TextStyle SMALL = TextStyle.plain(3.6).in(Palette.SOFT);
  private static final TextStyle PLAIN = TextStyle.plain(3.3);

  private final CutFileParameters job;
  private final Stencil stencil;
  private final Function<Message, String> words;
  private final ProofFacts facts;
  private final ProofPicture picture;
  private final double width;
  private final double height;
  private final double factsTop;
  private final List<Ink> inks = new ArrayList<>();

  /**
   * Sets up the page of one stencil.
   *
   * @param staying the pieces that are cut all round and stay, in the blank's frame
   * @param units feet and inches make a Letter page, metric an A4 page
   * @param words of the door that makes it
   */
  public ProofPage(
      CutFileParameters job,
      StencilSet set,
      Stencil stencil,
      PanelPlan plan,
      List<Region> staying,
      UnitSystem units,
      Function<Message, String> words) {
    this.job = job;
    this.words = words;
    this.stencil = stencil;
    this.width = units == UnitSystem.METRIC ? 210 : 215.9;
    this.height = units == UnitSystem.METRIC ? 297 : 279.4;
    ProofFacts anyScale = new ProofFacts(set, stencil, plan, staying.size(), units, 1);
    this.factsTop = height - EDGE - factsHeight(anyScale);
    Bounds box = new Bounds(EDGE + 8, PICTURE_TOP, width - EDGE, factsTop - EDGE / 2);
    this.picture = new ProofPicture(stencil, plan, staying, box, anyScale.checkWords(), words);
    this.facts = new ProofFacts(set, stencil, plan, staying.size(), units, picture.denominator());
  }

  /** The page on its paper. */
  public Drawing drawing() {
    Drawing page = paper();
    for (PdfFile.PdfLayer layer : layers()) {
      page = page.under(layer.drawing());
    }
    return page;
  }

  /** What lies under the layers. */
  Drawing paper() {
    inks.clear();
    head();
    polarity();
    facts();
    inks.addAll(picture.film());
    return Drawing.paper(width, height, inks);
  }

  /** The picture's parts, so that the page can be read back and judged. */
  List<PdfFile.PdfLayer> layers() {
    return List.of(
        layer(CutLayer.WEEDED, picture.weeded()),
        layer(CutLayer.THROUGH_CUT, picture.edge()),
        layer(CutLayer.PEN, picture.notes()));
  }

  private PdfFile.PdfLayer layer(CutLayer layer, List<Ink> of) {
    return new PdfFile.PdfLayer(layer.id(), Drawing.paper(width, height, of));
  }

  private void head() {
    inks.add(
        Text.start(
            new Vec(EDGE, 22), fitted(job.inlay(), TextStyle.bold(6.5)), TextStyle.bold(6.5)));
    String step =
        words.apply(Message.of("inlay.proof-page.subtitle", job.issue(), stencil.colour()));
    inks.add(Text.start(new Vec(EDGE, 29), fitted(step, SMALL), SMALL));
    inks.add(Stroke.line(Pen.of(0.4, Palette.INK), new Vec(EDGE, 32), new Vec(width - EDGE, 32)));
  }

  private String fitted(String text, TextStyle style) {
    return TextMeasure.fitted(text, style, width - 2 * EDGE);
  }

  private void polarity() {
    inks.add(
        Text.start(
            new Vec(EDGE, 41),
            words.apply(Message.of("inlay.proof-page.what-to-weed")),
            TextStyle.bold(5.5)));
    swatch(EDGE, true, Message.of("inlay.proof-page.weeded"));
    swatch(EDGE + 98, false, Message.of("inlay.proof-page.kept"));
    inks.add(ProofPicture.ring(new Vec(EDGE + 5, 59), 1));
    text(EDGE, 60.3, Message.of("inlay.proof-page.ringed"));
  }

  private void swatch(double x, boolean weeded, Message meaning) {
    Ring box = Ring.rectangle(x, 46, x + 10, 53);
    inks.add(Fill.of(Palette.WHITE, box));
    if (weeded) {
      inks.addAll(ProofPicture.SHADE.on(List.of(box)));
    }
    inks.add(Stroke.rings(Pen.of(0.25, Palette.INK), List.of(box)));
    text(x, 50.8, meaning);
  }

  private void text(double x, double y, Message meaning) {
    inks.add(Text.start(new Vec(x + 13, y), words.apply(meaning), PLAIN));
  }

  private double factsHeight(ProofFacts of) {
    return of.rows().stream().mapToDouble(r -> lines(r).size() * LINE + ROW_GAP).sum();
  }

  private List<String> lines(ProofFacts.Row row) {
    return TextMeasure.wrap(words.apply(row.words()), PLAIN, width - 2 * EDGE - LABELS);
  }

  private void facts() {
    double y = factsTop;
    for (ProofFacts.Row row : facts.rows()) {
      inks.add(Text.start(new Vec(EDGE, y), words.apply(row.label()), TextStyle.bold(3.3)));
      for (String line : lines(row)) {
        inks.add(Text.start(new Vec(EDGE + LABELS, y), line, PLAIN));
        y += LINE;
      }
      y += ROW_GAP;
    }
  }
}
