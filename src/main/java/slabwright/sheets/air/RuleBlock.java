package slabwright.sheets.air;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;
import slabwright.words.Words;
import slabwright.work.rule.RuleNote;

/** One rule held against the job: its sign and subject, what holds here, what to do, the source. */
public record RuleBlock(RuleNote note, Words words) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    return type.packet() ? runIn(type, width) : apart(type, width);
  }

  private List<Slice> apart(TypeSizes type, double width) {
    double k = type.k();
    double indent = 6 * k;
    List<Ink> inks = new ArrayList<>();
    inks.add(Text.start(new Vec(0, 4 * k), CautionSheet.sign(note.verdict()), sign(type)));
    double y = 0;
    y = lines(inks, words.say(note.subject()), type.strong(), type, width - indent, y);
    y = lines(inks, words.say(note.finding()), type.body(), type, width - indent, y);
    if (note.hasTodo()) {
      y = lines(inks, "→ " + words.say(note.todo()), type.body(), type, width - indent, y);
    }
    return List.of(
        closed(inks, lines(inks, source(), type.small(), type, width - indent, y), k, width));
  }

  /** The same on few lines of a wide column: the finding behind its subject, all in one size. */
  private List<Slice> runIn(TypeSizes type, double width) {
    double k = type.k();
    double room = width - 6 * k;
    TextStyle plain = type.small().in(Palette.INK);
    TextStyle bold = type.label();
    String subject = words.say(note.subject());
    String finding = words.say(note.finding());
    List<Ink> inks = new ArrayList<>();
    inks.add(Text.start(new Vec(0, 3.6 * k), CautionSheet.sign(note.verdict()), sign(type)));
    double y = lines(inks, subject, bold, type, room, 0);
    double after = TextMeasure.width(subject, bold) + 2 * k;
    if (after + TextMeasure.width(finding, plain) <= room) {
      inks.add(Text.start(new Vec(6 * k + after, y - 0.7 * k), finding, plain));
    } else {
      y = lines(inks, finding, plain, type, room, y);
    }
    if (note.hasTodo()) {
      y = lines(inks, "→ " + words.say(note.todo()), plain, type, room, y);
    }
    return List.of(closed(inks, lines(inks, source(), type.small(), type, room, y), k, width));
  }

  private String source() {
    return words.say(note.rule()) + ": " + words.say(note.number());
  }

  private static Slice closed(List<Ink> inks, double y, double k, double width) {
    double foot = y + 0.6 * k;
    inks.add(Stroke.line(Pen.of(0.12, Palette.RULE), new Vec(0, foot), new Vec(width, foot)));
    return new Slice(foot + 1.2 * k, false, inks);
  }

  private TextStyle sign(TypeSizes type) {
    return type.strong().in(note.verdict() == RuleNote.Verdict.NOT_MET ? Palette.RED : Palette.INK);
  }

  private static double lines(
      List<Ink> inks, String said, TextStyle style, TypeSizes type, double width, double y) {
    double leading = type.leading() * style.size() / type.body().size();
    double at = y;
    for (String line : TextMeasure.wrap(said, style, width)) {
      at += leading;
      inks.add(Text.start(new Vec(6 * type.k(), at - 0.7 * type.k()), line, style));
    }
    return at;
  }
}
