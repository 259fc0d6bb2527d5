package slabwright.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import slabwright.drawing.Colour;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.PrimitiveInk;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.PrintedPage;

/** What must hold of any page, whoever reads it; each rule gives the faults that it finds. */
final class PageRules {
  /** Lines this heavy are walls and the like, mm; thinner ones are hatches. */
  private static final double HEAVY = 0.5;

  /** Words paler than this against what they stand on can't be read at arm's length. */
  private static final double LEAST_CONTRAST = 3;

  private static final double MARGIN = 9.9;
  private static final double CELL = 16;

  private final PrintedPage page;
  private final Drawing drawing;
  private final List<PrimitiveInk> plain;
  private final List<TextBox> boxes;

  PageRules(PrintedPage page) {
    this.page = page;
    this.drawing = page.drawing();
    this.plain = List.copyOf(drawing.plain());
    this.boxes = TextBox.of(drawing);
  }

  private String fault(String what) {
    return page.name() + ": " + what;
  }

  List<String> inkOutside() {
    Bounds inside = drawing.bounds().grown(-MARGIN);
    List<String> faults = new ArrayList<>();
    for (TextBox box : boxes) {
      if (!inside.including(box.bounds()).equals(inside)) {
        faults.add(fault(box.words() + " is outside"));
      }
    }
    for (PrimitiveInk ink : plain) {
      if (!inside.including(ink.reach()).equals(inside)) {
        faults.add(fault(ink.getClass().getSimpleName() + " is outside"));
      }
    }
    return faults;
  }

  List<String> wordsOnWords() {
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = i + 1; j < boxes.size(); j++) {
        if (boxes.get(i).overlaps(boxes.get(j))) {
          faults.add(fault(boxes.get(i).words() + " / " + boxes.get(j).words()));
        }
      }
    }
    return faults;
  }

  /** Words that end before their end. */
  List<String> wordsCutShort() {
    return boxes.stream()
        .filter(b -> b.words().contains("…"))
        .map(b -> fault(b.words() + " is cut short"))
        .toList();
  }

  /** Words of these that lie on a field of a colour, as its name would. */
  List<String> wordsOnFields(Set<String> words) {
    List<String> faults = new ArrayList<>();
    for (TextBox box : boxes) {
      for (PrimitiveInk ink : plain) {
        if (words.contains(box.words())
            && ink instanceof Fill f
            && !f.colour().equals(Palette.WHITE)
            && isIn(f, box.bounds().middle())) {
          faults.add(fault(box.words() + " on a field " + f.colour().css()));
        }
      }
    }
    return faults;
  }

  /** Words on a sign that is not their own. */
  List<String> wordsOnSigns() {
    List<String> faults = new ArrayList<>();
    for (Ink ink : drawing.inks()) {
      if (ink instanceof Symbol s && s.kind() != Symbol.Kind.WITNESS) {
        // The square inside a round sign: words beside a ring may touch its box's corner.
        Bounds b = Bounds.EMPTY.including(s.at()).grown(s.size() * 0.35);
        TextBox sign = new TextBox("", Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()));
        boxes.stream()
            .filter(t -> !t.words().equals(s.words()) && t.overlaps(sign))
            .forEach(t -> faults.add(fault(t.words() + " on a sign " + s.kind())));
      }
    }
    return faults;
  }

  /** Words that can't be read for what lies under or over them. */
  List<String> wordsHidden() {
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < plain.size(); i++) {
      if (plain.get(i) instanceof Text t && !t.words().isBlank()) {
        faults.addAll(hidden(t, i));
      }
    }
    return faults;
  }

  private List<String> hidden(Text t, int place) {
    List<String> faults = new ArrayList<>();
    TextBox box = TextBox.of(t);
    Vec middle = box.bounds().middle();
    Colour ground = Palette.WHITE;
    int from = 0;
    for (int i = 0; i < plain.size(); i++) {
      if (plain.get(i) instanceof Fill f && isIn(f, middle)) {
        if (i > place) {
          faults.add(fault(t.words() + " lies under a fill"));
        } else {
          ground = f.colour();
          from = i;
        }
      }
    }
    if (t.style().colour().contrast(ground) < LEAST_CONTRAST) {
      faults.add(fault(t.words() + " on " + ground.css()));
    }
    for (int i = from; i < plain.size(); i++) {
      if (plain.get(i) instanceof Stroke s && s.pen().width() >= HEAVY && crosses(s, box)) {
        faults.add(fault("a heavy line through " + t.words()));
      }
    }
    return faults;
  }

  static boolean isIn(Fill f, Vec p) {
    boolean in = false;
    for (Ring ring : f.rings()) {
      List<Vec> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        Vec a = points.get(i);
        Vec b = points.get((i + 1) % points.size());
        if (a.y() > p.y() != b.y() > p.y()
            && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
          in = !in;
        }
      }
    }
    return in;
  }

  private static boolean crosses(Stroke s, TextBox box) {
    List<Line> lines = new ArrayList<>(s.lines());
    for (Ring ring : s.rings()) {
      List<Vec> points = new ArrayList<>(ring.points());
      points.add(points.get(0));
      lines.add(new Line(points));
    }
    Bounds inner = box.bounds().grown(-0.4);
    for (Line line : lines) {
      for (int i = 0; i + 1 < line.points().size(); i++) {
        Vec a = line.points().get(i);
        Vec b = line.points().get(i + 1);
        int steps = (int) Math.ceil(a.distanceTo(b) / 0.5) + 1;
        if (Bounds.of(List.of(a, b)).meets(inner)) {
          for (int k = 0; k <= steps; k++) {
            if (inner.contains(a.towards(b, k / (double) steps))) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }

  /** How much of the page, title strip apart, has something on it; a drawing counts whole. */
  double full() {
    Bounds body = drawing.bounds().grown(-MARGIN);
    int across = (int) (body.width() / CELL);
    int down = (int) ((body.height() - 14) / CELL);
    Set<Integer> touched = new HashSet<>();
    for (PrimitiveInk ink : plain) {
      Bounds b = ink instanceof Text t ? TextBox.of(t).bounds() : ink.reach();
      for (int x = 0; x < across; x++) {
        for (int y = 0; y < down; y++) {
          Bounds cell =
              new Bounds(
                  body.minX() + x * CELL,
                  body.minY() + y * CELL,
                  body.minX() + (x + 1) * CELL,
                  body.minY() + (y + 1) * CELL);
          if (cell.meets(b)) {
            touched.add(x * 1000 + y);
          }
        }
      }
    }
    return touched.size() / (double) (across * down);
  }

  /** Sizes of words in tenths of a point; letters within signs are drawn with them. */
  Set<Long> sizes() {
    Set<Long> sizes = new TreeSet<>();
    drawing.inks().stream()
        .filter(i -> !(i instanceof Symbol))
        .flatMap(i -> i.parts(Bounds.EMPTY).stream())
        .filter(Text.class::isInstance)
        .forEach(t -> sizes.add(Math.round(((Text) t).style().size() * 720 / 25.4)));
    return sizes;
  }

  /** All words of the page. */
  String words() {
    StringBuilder all = new StringBuilder();
    boxes.forEach(b -> all.append(b.words()).append(' '));
    return all.toString().replace('\u00a0', ' ');
  }
}
