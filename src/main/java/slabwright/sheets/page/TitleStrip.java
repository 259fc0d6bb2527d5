package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Raster;
import slabwright.drawing.ScaleBar;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * What is the same on every page: the title on top, and at the foot one strip with the contractor,
 * the site and client, and the page's place.
 *
 * @param packet what the packet is called, or the single sheets
 */
record TitleStrip(SheetContext context, TitleStripText issue, String packet) {
  /** Between two of the strip's columns, mm. */
  private static final double BETWEEN = 4;

  private static final double MARK_HIGH = 9.5;
  private static final double MARK_WIDE = 24;

  List<Ink> draw(PageDraft draft, int number, int of) {
    List<Ink> inks = new ArrayList<>();
    header(inks, draft);
    strip(inks, number, of);
    draft.scale().ifPresent(s -> check(inks, s));
    return inks;
  }

  private void header(List<Ink> inks, PageDraft draft) {
    Bounds h = context.page().header();
    TypeSizes type = context.type();
    double room =
        (draft.scale().isPresent() && context.page().form() != PageFrame.Form.PORTRAIT
                ? context.page().field().maxX()
                : h.maxX())
            - h.minX();
    // A long title is set in the next size: its end is what tells two pages apart.
    TextStyle large = type.title();
    TextStyle style = TextMeasure.width(draft.title(), large) <= room ? large : type.heading();
    String title = TextMeasure.fitted(draft.title(), style, room);
    TextStyle under = type.body().in(Palette.SOFT);
    List<String> said =
        TextMeasure.wrap(draft.area().isEmpty() ? draft.subtitle() : named(draft), under, room);
    boolean packet = context.page().ofPacket();
    boolean broken = said.size() > 1;
    double k = packet ? 1 : type.k();
    double up = packet ? (broken ? 5.8 : 7) : 5.4 * k;
    double down = packet ? (broken ? 10.6 : 14) : 10.6 * k;
    double next = packet ? 4.3 : 3.6 * k;
    inks.add(Text.start(new Vec(h.minX(), h.minY() + up), title, style));
    for (String line : said) {
      inks.add(Text.start(new Vec(h.minX(), h.minY() + down), line, under));
      down += next;
    }
  }

  private String named(PageDraft draft) {
    return draft.subtitle().isEmpty()
        ? draft.area()
        : context.say("sheets.title-strip.area-and-what", draft.area(), draft.subtitle());
  }

  private void strip(List<Ink> inks, int number, int of) {
    Bounds t = context.page().titleStrip();
    inks.add(
        Stroke.line(
            Pen.of(0.5, Palette.INK), new Vec(t.minX(), t.minY()), new Vec(t.maxX(), t.minY())));
    double third = t.width() / 3;
    String release =
        issue.release() == 0
            ? context.say("sheets.title-strip.draft", date(), paper())
            : context.say("sheets.title-strip.release", issue.release(), date(), paper());
    String place = context.say("sheets.title-strip.page", packet, number, of);
    double marked = mark(inks, t);
    line(inks, t.minX() + marked, 0, issue.contractor(), issue.phone(), third - 4);
    double left = marked + Math.min(third, widest(issue.contractor(), issue.phone()) + BETWEEN);
    double above = t.width() - left - TextMeasure.width(place, context.type().label()) - BETWEEN;
    double below = t.width() - left - TextMeasure.width(release, context.type().small()) - BETWEEN;
    upper(inks, t.minX() + left, 0, issue.site(), above);
    lower(inks, t.minX() + left, 0, forWhom(), below);
    note(inks, t.minX() + left, above);
    line(inks, t.maxX(), 1, place, release, third);
  }

  /** The contractor's mark at the strip's left end; how much of its width that takes, mm. */
  private double mark(List<Ink> inks, Bounds strip) {
    if (issue.mark().isEmpty()) {
      return 0;
    }
    TitleStripText.Mark mark = issue.mark().get();
    double high = Math.min(MARK_HIGH, MARK_WIDE / mark.aspect());
    double wide = high * mark.aspect();
    double top = strip.minY() + 1 + (MARK_HIGH - high) / 2;
    Bounds at = new Bounds(strip.minX(), top, strip.minX() + wide, top + high);
    inks.add(new Raster(at, mark.picture()));
    return wide + 2;
  }

  private double widest(String bold, String plain) {
    return Math.max(
        TextMeasure.width(bold, context.type().label()),
        TextMeasure.width(plain, context.type().small()));
  }

  /** The client; what is noted of the site where there is none. */
  private String forWhom() {
    return issue.client().isEmpty()
        ? issue.note()
        : context.say("sheets.title-strip.client", issue.client());
  }

  /** What is noted of the site, beside its name where the client stands below. */
  private void note(List<Ink> inks, double x, double room) {
    if (!issue.client().isEmpty() && !issue.note().isEmpty()) {
      TextStyle plain = context.type().small();
      double named = TextMeasure.width(issue.site(), context.type().label()) + 2;
      double y = context.page().titleStrip().minY() + 4.7;
      // A note that has no room is left out: half a word of it tells nothing.
      if (named + TextMeasure.width(issue.note(), plain) <= room) {
        inks.add(Text.start(new Vec(x + named, y), issue.note(), plain));
      }
    }
  }

  private String paper() {
    return context.page().paper().word();
  }

  private String date() {
    return context.times().date(issue.date());
  }

  private void line(
      List<Ink> inks, double x, double end, String first, String second, double room) {
    upper(inks, x, end, first, room);
    lower(inks, x, end, second, room);
  }

  private void upper(List<Ink> inks, double x, double end, String words, double room) {
    TextStyle bold = context.type().label();
    String said = TextMeasure.fitted(words, bold, room);
    double y = context.page().titleStrip().minY() + 4.7;
    inks.add(Text.start(new Vec(x - end * TextMeasure.width(said, bold), y), said, bold));
  }

  private void lower(List<Ink> inks, double x, double end, String words, double room) {
    TextStyle plain = context.type().small();
    String said = TextMeasure.fitted(words, plain, room);
    double y = context.page().titleStrip().minY() + 9.4;
    inks.add(Text.start(new Vec(x - end * TextMeasure.width(said, plain), y), said, plain));
  }

  /** The scale as bar and in words, and the check line, under the drawing. */
  private void check(List<Ink> inks, Scale scale) {
    PageFrame page = context.page();
    TypeSizes type = context.type();
    Bounds t = page.titleStrip();
    double foot = t.minY() - 2.5;
    double width = page.form() == PageFrame.Form.PORTRAIT ? t.width() : page.field().width();
    double left = t.minX() + 2;
    inks.addAll(CheckLine.at(new Vec(left, foot - 1), context));
    double bar = left + CheckLine.length(page.paper()) + 8;
    double room = t.minX() + width - bar;
    String words = context.words().say(scale.name());
    double said = TextMeasure.width(words, type.small()) + 6;
    TextStyle style = type.packet() ? type.small() : TextStyle.plain(2.7 * type.k());
    inks.addAll(
        ScaleBar.within(room - said - 12, scale.denominator(), context.units())
            .inks(new Vec(bar, foot - 2), style, type.k()));
    inks.add(Text.end(new Vec(t.minX() + width, foot - 0.5), words, type.small()));
  }
}
