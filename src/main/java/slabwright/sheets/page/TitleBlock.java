package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** What is the same on every page: the frame, the header and the title block. */
final class TitleBlock {
  private static final double PAD = 6;

  private final PageFrame page;
  private final TypeSizes type;
  private final TitleBlockText issue;
  private final SheetContext context;

  TitleBlock(SheetContext context, TitleBlockText issue) {
    this.context = context;
    this.page = context.page();
    this.type = page.type();
    this.issue = issue;
  }

  List<Ink> draw(PageDraft draft, int number, int of) {
    List<Ink> inks = new ArrayList<>();
    frame(inks);
    header(inks, draft);
    names(inks, draft);
    fields(inks, draft);
    Bounds t = page.titleBlock();
    Vec corner = new Vec(t.maxX() - PAD, t.maxY() - PAD);
    inks.add(
        Text.end(
            corner,
            context.say("sheets.title-block.of", number, of),
            type.strong().sized(4 * type.k())));
    return inks;
  }

  private void frame(List<Ink> inks) {
    Bounds f = page.frame();
    Bounds t = page.titleBlock();
    Pen pen = Pen.of(0.5, Palette.INK);
    inks.add(Stroke.rings(pen, List.of(Ring.rectangle(f.minX(), f.minY(), f.maxX(), f.maxY()))));
    inks.add(Stroke.line(pen, new Vec(t.minX(), t.minY()), new Vec(t.maxX(), t.minY())));
  }

  private void header(List<Ink> inks, PageDraft draft) {
    Bounds h = page.header();
    double k = type.k();
    double x = h.minX();
    double foot = h.minY() + 9.6 * k;
    if (!draft.numeral().isEmpty()) {
      inks.add(Text.start(new Vec(x, foot), draft.numeral(), type.numeral()));
      x += TextMeasure.width(draft.numeral(), type.numeral()) + 4 * k;
    }
    double room = (draft.scale().isPresent() ? page.field().maxX() : h.maxX()) - x;
    inks.add(
        Text.start(
            new Vec(x, foot - 4.6 * k),
            TextMeasure.fitted(draft.title(), type.title(), room),
            type.title()));
    TextStyle under = type.body().in(Palette.SOFT);
    inks.add(
        Text.start(
            new Vec(x, foot + 0.6 * k), TextMeasure.fitted(draft.subtitle(), under, room), under));
  }

  private void names(List<Ink> inks, PageDraft draft) {
    Bounds t = page.titleBlock();
    double k = type.k();
    double x = t.minX() + PAD;
    double room = fieldsX() - x - PAD;
    TextStyle name = type.title();
    inks.add(
        Text.start(
            new Vec(x, t.minY() + 9 * k), TextMeasure.fitted(issue.site(), name, room), name));
    TextStyle note = type.body().in(Palette.SOFT);
    inks.add(
        Text.start(
            new Vec(x, t.minY() + 14.6 * k), TextMeasure.fitted(issue.note(), note, room), note));
    draft
        .scale()
        .ifPresent(
            s ->
                inks.addAll(
                    PrintedScaleBar.at(
                        new Vec(x + 1, t.maxY() - 7 * k), s, context.units(), room * 0.9, type)));
  }

  private double fieldsX() {
    Bounds t = page.titleBlock();
    return t.minX() + 0.335 * t.width();
  }

  private String area(PageDraft draft) {
    return draft.area().isEmpty() ? context.say("sheets.title-block.whole-site") : draft.area();
  }

  private String scale(PageDraft draft) {
    return draft
        .scale()
        .map(s -> context.words().say(s.name()))
        .orElseGet(() -> context.say("sheets.title-block.no-drawing"));
  }

  private String release() {
    return issue.release() == 0
        ? context.say("sheets.title-block.draft")
        : Integer.toString(issue.release());
  }

  private void fields(List<Ink> inks, PageDraft draft) {
    Bounds t = page.titleBlock();
    double k = type.k();
    String[][] fields = {
      {context.say("sheets.title-block.area"), area(draft)},
      {context.say("sheets.title-block.scale"), scale(draft)},
      {context.say("sheets.title-block.paper"), page.paper().word()},
      {context.say("sheets.title-block.release"), release()},
      {context.say("sheets.title-block.date"), context.times().date(issue.date())}
    };
    double[] shares = {0.3, 0.23, 0.13, 0.13, 0.21};
    double x = fieldsX();
    double room = t.maxX() - PAD - x;
    for (int i = 0; i < fields.length; i++) {
      double wide = room * shares[i];
      inks.add(Text.start(new Vec(x, t.minY() + 8 * k), fields[i][0], type.small()));
      TextStyle style = type.strong().sized(4 * k);
      String words = TextMeasure.fitted(fields[i][1], style, wide - 3);
      inks.add(Text.start(new Vec(x, t.minY() + 14 * k), words, style));
      x += wide;
    }
    inks.addAll(CheckLine.at(new Vec(fieldsX(), t.maxY() - 6.2 * k), context));
  }
}
