package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * What is written on a panel with a pen, in single strokes.
 *
 * @param box its place on the panel, mm
 * @param lines of words, from the top; the first begins with an arrow to the top
 */
public record PenLabel(Bounds box, List<Message> lines) {
  private static final double LINE_SPACING = 1.5;

  public PenLabel {
    lines = List.copyOf(lines);
  }

  /** The room that a label of this many lines needs, mm. */
  static Bounds room(int lines, int letters, double height) {
    return new Bounds(
        0,
        0,
        StrokeLetters.width(letters, height),
        (lines - 1 + 1 / LINE_SPACING) * LINE_SPACING * height);
  }

  /** The words in one line, for whoever can't read strokes. */
  String text(Function<Message, String> words) {
    return String.join(", ", lines.stream().map(words).toList());
  }

  /** The strokes, as large as the box holds. */
  List<Line> strokes(Function<Message, String> words) {
    List<String> said = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = words.apply(lines.get(i)).toUpperCase(Locale.ROOT);
      said.add(i == 0 ? StrokeLetters.ARROW + " " + line : line);
    }
    int longest = said.stream().mapToInt(String::length).max().orElse(1);
    double height =
        Math.min(
            box.height() / room(said.size(), 1, 1).height(),
            box.width() / StrokeLetters.width(longest, 1));
    List<Line> all = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      Vec at = new Vec(box.minX(), box.minY() + i * LINE_SPACING * height);
      all.addAll(StrokeLetters.lines(said.get(i), at, height));
    }
    return all;
  }
}
