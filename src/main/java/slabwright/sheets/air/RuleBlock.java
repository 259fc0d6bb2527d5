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
    String source = words.say(note.rule()) + ": " + words.say(note.number());
    y = lines(inks, source, type.small(), type, width - indent, y);
    double foot = y + 1.6 * k;
    inks.add(Stroke.line(Pen.of(0.12, Palette.RULE), new Vec(0, foot), new Vec(width, foot)));
    return List.of(new Slice(foot + 1.4 * k, false, inks));
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
