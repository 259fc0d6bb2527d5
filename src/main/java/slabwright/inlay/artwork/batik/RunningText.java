package slabwright.inlay.artwork.batik;

import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.text.AttributedCharacterIterator.Attribute;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator;
import org.apache.batik.gvt.text.TextPaintInfo;

/**
 * Text that goes on from one element into the next in the same font. Browsers shape it as one, so
 * letters are kerned and join over the border; the SVG library lays each element out by itself.
 */
final class RunningText {
  private static final Attribute SHAPED =
      new GVTAttributedCharacterIterator.TextAttribute("shaped-letters");

  private static final Attribute FONT = GVTAttributedCharacterIterator.TextAttribute.GVT_FONT;
  private static final Attribute PAINT = GVTAttributedCharacterIterator.TextAttribute.PAINT_INFO;

  /** No distance is the same as none of its own. */
  private static final Set<Attribute> DISTANCES =
      Set.of(
          GVTAttributedCharacterIterator.TextAttribute.LETTER_SPACING,
          GVTAttributedCharacterIterator.TextAttribute.WORD_SPACING);

  private static final List<Attribute> PLACES =
      List.of(
          GVTAttributedCharacterIterator.TextAttribute.X,
          GVTAttributedCharacterIterator.TextAttribute.Y);

  /** Where one of these changes, browsers begin to shape anew; shifts and paints don't count. */
  private static final Set<Attribute> KEPT =
      Set.of(
          TextAttribute.WEIGHT,
          TextAttribute.POSTURE,
          TextAttribute.WIDTH,
          TextAttribute.BIDI_EMBEDDING,
          GVTAttributedCharacterIterator.TextAttribute.GVT_FONT_FAMILIES,
          GVTAttributedCharacterIterator.TextAttribute.LETTER_SPACING,
          GVTAttributedCharacterIterator.TextAttribute.WORD_SPACING,
          GVTAttributedCharacterIterator.TextAttribute.KERNING,
          GVTAttributedCharacterIterator.TextAttribute.LANGUAGE,
          GVTAttributedCharacterIterator.TextAttribute.WRITING_MODE,
          GVTAttributedCharacterIterator.TextAttribute.TEXTPATH);

  private record Marked(Optional<ShapedLetters> letters, int length) {}

  /** A character, and whether it has a place of its own, so that nothing is joined to it. */
  private record Letter(char character, boolean placed) {}

  private record Span(
      int from,
      int to,
      Optional<HighResolutionFont.Fine> font,
      Map<Attribute, Object> how,
      List<Letter> letters) {
    boolean goesOnIn(Span next) {
      return font.isPresent()
          && next.font.isPresent()
          && font.get().isSameAs(next.font.get())
          && KEPT.stream().allMatch(k -> Objects.equals(asked(k), next.asked(k)));
    }

    private Object asked(Attribute which) {
      Object value = how.get(which);
      return DISTANCES.contains(which) && value instanceof Float f && f == 0 ? null : value;
    }

    boolean isPaintedAs(Span other) {
      return how.get(PAINT) instanceof TextPaintInfo a
          && other.how.get(PAINT) instanceof TextPaintInfo b
          && a.visible == b.visible
          && Objects.equals(a.fillPaint, b.fillPaint)
          && Objects.equals(a.strokePaint, b.strokePaint)
          && Objects.equals(a.strokeStroke, b.strokeStroke)
          && Objects.equals(a.composite, b.composite);
    }
  }

  private RunningText() {}

  /**
   * The same text with what its letters look like.
   *
   * @param line its fonts found
   * @param borders what divides it into the runs that are laid out by themselves
   */
  static AttributedCharacterIterator shapedOverBorders(
      AttributedCharacterIterator line, Set<? extends Attribute> borders) {
    List<Span> spans = spans(line, borders);
    AttributedString marked = new AttributedString(line);
    int next;
    for (int first = 0; first < spans.size(); first = next) {
      next = first + 1;
      while (next < spans.size() && spans.get(first).goesOnIn(spans.get(next))) {
        next++;
      }
      if (spans.get(first).font().isPresent()) {
        mark(marked, spans.subList(first, next));
      }
    }
    return marked.getIterator();
  }

  private static List<Span> spans(
      AttributedCharacterIterator line, Set<? extends Attribute> borders) {
    List<Span> spans = new ArrayList<>();
    int begin = line.getBeginIndex();
    int limit;
    for (int at = begin; at < line.getEndIndex(); at = limit) {
      line.setIndex(at);
      limit = line.getRunLimit(borders);
      Map<Attribute, Object> how = line.getAttributes();
      List<Letter> letters = new ArrayList<>();
      for (int i = at; i < limit; i++) {
        char character = line.setIndex(i);
        letters.add(new Letter(character, PLACES.stream().anyMatch(p -> isSet(line, p))));
      }
      Optional<HighResolutionFont.Fine> font =
          how.get(FONT) instanceof HighResolutionFont.Fine f ? Optional.of(f) : Optional.empty();
      spans.add(new Span(at - begin, limit - begin, font, how, letters));
    }
    line.first();
    return spans;
  }

  private static boolean isSet(AttributedCharacterIterator line, Attribute distance) {
    return line.getAttribute(distance) instanceof Float f && !f.isNaN();
  }

  private static void mark(AttributedString marked, List<Span> spans) {
    Span first = spans.get(0);
    Optional<ShapedLetters> whole = shaped(spans);
    for (Span s : spans) {
      int from = s.from() - first.from();
      int to = s.to() - first.from();
      Optional<ShapedLetters> part =
          whole.map(
              w -> {
                int head = first.from() + w.head(from);
                boolean torn =
                    spans.stream()
                        .filter(o -> o.from() <= head && head < o.to())
                        .anyMatch(o -> !o.isPaintedAs(s));
                return w.part(from, to, torn);
              });
      marked.addAttribute(SHAPED, new Marked(part, to - from), s.from(), s.to());
    }
  }

  /** Shaped anew at each letter with a place of its own. */
  private static Optional<ShapedLetters> shaped(List<Span> spans) {
    List<Letter> letters = spans.stream().flatMap(s -> s.letters().stream()).toList();
    Span first = spans.get(0);
    List<ShapedLetters> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    for (int i = 0; i < letters.size(); i++) {
      piece.append(letters.get(i).character());
      if (i + 1 == letters.size() || letters.get(i + 1).placed()) {
        char[] together = piece.toString().toCharArray();
        first
            .font()
            .flatMap(f -> f.shaped(together, key -> first.how().get(key)))
            .ifPresent(pieces::add);
        piece.setLength(0);
      }
    }
    // where one piece can't be shaped, the whole is too short
    return Optional.of(ShapedLetters.joined(pieces)).filter(w -> w.length() == letters.size());
  }

  /**
   * How the letters of a run look; nothing where they can't be shaped.
   *
   * @param alone shapes the run by itself, where it is none of those that were marked
   */
  static Optional<ShapedLetters> part(
      AttributedCharacterIterator run, Supplier<Optional<ShapedLetters>> alone) {
    int before = run.getIndex();
    run.first();
    Object value = run.getAttribute(SHAPED);
    run.setIndex(before);
    int length = run.getEndIndex() - run.getBeginIndex();
    return value instanceof Marked m && m.length() == length ? m.letters() : alone.get();
  }
}
