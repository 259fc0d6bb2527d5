package slabwright.inlay.artwork.batik;

import java.awt.AlphaComposite;
import java.awt.Paint;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.bridge.StrokingTextPainter;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.bridge.TextSpanLayout;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator.TextAttribute;
import org.apache.batik.gvt.text.TextPaintInfo;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** Text as outlines, run by run, each with its own paint; says where a font had to be replaced. */
final class TextVisitor {
  private final SceneVisitor walk;
  private final WarningCollector notes;

  TextVisitor(SceneVisitor walk, WarningCollector notes) {
    this.walk = walk;
    this.notes = notes;
  }

  void visit(TextNode node, SceneState state) {
    AttributedCharacterIterator all = node.getAttributedCharacterIterator();
    if (all == null || !(node.getTextPainter() instanceof StrokingTextPainter painter)) {
      return;
    }
    List<StrokingTextPainter.TextRun> runs =
        ((List<?>) painter.getTextRuns(node, all))
            .stream().map(StrokingTextPainter.TextRun.class::cast).toList();
    for (StrokingTextPainter.TextRun run : runs) {
      run.getACI().first();
      if (run.getACI().getAttribute(TextAttribute.PAINT_INFO) instanceof TextPaintInfo paint
          && paint.visible) {
        // that of the text itself is its node's; the library gives this for the elements within
        double own = paint.composite instanceof AlphaComposite a ? a.getAlpha() : 1;
        draw(run.getLayout(), paint, state.faded(own));
        checkFont(run, state);
      }
    }
  }

  /** The painting order of SVG: lines under and over the text, the text, the line through it. */
  private void draw(TextSpanLayout layout, TextPaintInfo p, SceneState state) {
    boolean lines = !layout.isVertical() && !layout.isOnATextPath();
    if (lines) {
      int under = TextSpanLayout.DECORATION_UNDERLINE;
      line(layout, under, p.underlinePaint, p.underlineStroke, p.underlineStrokePaint, state);
      int over = TextSpanLayout.DECORATION_OVERLINE;
      line(layout, over, p.overlinePaint, p.overlineStroke, p.overlineStrokePaint, state);
    }
    walk.fill(FineOutline.of(layout.getOutline()), p.fillPaint, state);
    walk.stroke(FineOutline.of(layout.getOutline()), p.strokeStroke, p.strokePaint, state);
    if (lines) {
      int through = TextSpanLayout.DECORATION_STRIKETHROUGH;
      line(
          layout,
          through,
          p.strikethroughPaint,
          p.strikethroughStroke,
          p.strikethroughStrokePaint,
          state);
    }
  }

  private void line(
      TextSpanLayout layout,
      int which,
      Paint fill,
      Stroke stroke,
      Paint strokePaint,
      SceneState state) {
    walk.fill(FineOutline.of(layout.getDecorationOutline(which)), fill, state);
    walk.stroke(FineOutline.of(layout.getDecorationOutline(which)), stroke, strokePaint, state);
  }

  private void checkFont(StrokingTextPainter.TextRun run, SceneState state) {
    AttributedCharacterIterator text = run.getACI();
    text.first();
    String shown = shown(text);
    if (shown.isBlank()) {
      return;
    }
    Vec place = middle(run.getLayout(), state);
    text.first();
    if (text.getAttribute(TextAttribute.GVT_FONT_FAMILIES) instanceof List<?> families
        && !families.isEmpty()
        && families.get(0) instanceof FontFamily.Missing missing) {
      notes.add(Kind.FONT_SUBSTITUTED, substituted(shown, missing), place);
    }
    text.first();
    if (text.getAttribute(TextAttribute.GVT_FONT) instanceof HighResolutionFont.Fine fine) {
      setOtherwise(fine, text, shown)
          .forEach(message -> notes.add(Kind.TEXT_SET_OTHERWISE, message, place));
    }
    if (text.getAttribute(TextAttribute.GVT_FONT) instanceof GVTFont font) {
      shown
          .codePoints()
          .filter(c -> !Character.isWhitespace(c) && !canDisplay(font, c))
          .findFirst()
          .ifPresent(c -> notes.add(Kind.CHARACTER_MISSING, missing(shown, c), place));
    }
  }

  private static List<Message> setOtherwise(
      HighResolutionFont.Fine font, AttributedCharacterIterator text, String shown) {
    List<Message> all = new ArrayList<>();
    if (font.isSheared()) {
      all.add(Message.of("inlay.text-visitor.sheared", shown));
    }
    if (font.isThickened()) {
      all.add(Message.of("inlay.text-visitor.thickened", shown));
    }
    if (!font.canSet(text)) {
      all.add(Message.of("inlay.text-visitor.not-shaped", shown));
    }
    if (font.isTorn(text)) {
      all.add(Message.of("inlay.text-visitor.joined-over-paints", shown));
    }
    return all;
  }

  private static boolean canDisplay(GVTFont font, int c) {
    return font instanceof HighResolutionFont.Fine fine
        ? fine.canDisplay(c)
        : Character.isBmpCodePoint(c) && font.canDisplay((char) c);
  }

  private static Message substituted(String shown, FontFamily.Missing missing) {
    String family = missing.getFamilyName();
    if (family.equals(FontResolver.NO_NAME)) {
      return Message.of("inlay.text-visitor.no-font-named", shown);
    }
    return missing
        .trouble()
        .map(why -> Message.of("inlay.text-visitor.carried-font-unreadable", shown, family, why))
        .orElseGet(() -> Message.of("inlay.text-visitor.font-not-at-hand", shown, family));
  }

  private static Message missing(String shown, int c) {
    return Message.of(
        "inlay.text-visitor.character-missing",
        Character.toString(c),
        "U+%04X".formatted(c),
        shown);
  }

  private static String shown(AttributedCharacterIterator text) {
    StringBuilder s = new StringBuilder();
    for (char c = text.first(); c != CharacterIterator.DONE; c = text.next()) {
      s.append(c);
    }
    return s.toString();
  }

  private static Vec middle(TextSpanLayout layout, SceneState state) {
    Rectangle2D box = layout.getOutline().getBounds2D();
    double[] at = {box.getCenterX(), box.getCenterY()};
    state.toPage().transform(at, 0, at, 0, 1);
    return new Vec(at[0], at[1]);
  }
}
