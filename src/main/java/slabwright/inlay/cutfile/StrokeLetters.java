package slabwright.inlay.cutfile;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.units.SortedCopy;

/**
 * Capitals and figures of single strokes on a grid of 4 by 6, our own. Accents are left off; what
 * has no letter here is a gap.
 */
final class StrokeLetters {
  /** An arrow that points up. */
  static final char ARROW = '^';

  private static final double WIDE = 4;
  private static final double HIGH = 6;
  private static final double ADVANCE = 5.6;

  /** Each stroke is a run of grid points, two figures a point; strokes are parted by spaces. */
  private static final String[] GLYPHS = {
    "^2620 022042",
    "A0602204246 0444",
    "B00063645443303 3342413000",
    "C4130100105163645",
    "D00062644422000",
    "E40000646 0333",
    "F400006 0333",
    "G41301001051636454323",
    "H0006 4046 0343",
    "I1030 2026 1636",
    "J4045361605",
    "K0006 400346",
    "L000646",
    "M0600234046",
    "N06004640",
    "O103041453616050110",
    "P06003041423303",
    "Q103041453616050110 3446",
    "R06003041423303 2346",
    "S413010010213334445361605",
    "T0040 2026",
    "U000516364540",
    "V002640",
    "W0016233640",
    "X0046 4006",
    "Y002340 2326",
    "Z00400646",
    "0103041453616050110 1432",
    "1112026 1636",
    "201103041420646",
    "301103041423313 334445361605",
    "436300444",
    "5400003334445361605",
    "6413010010516364544331304",
    "7004016",
    "813020110304142331304051636454433",
    "9051636454130100102133342",
    "#1016 3036 0242 0444",
    "-1333",
    "+2224 1333",
    ".2526",
    "/4006",
    "(30212536",
    ")10212516",
  };

  private static final Map<Character, List<Line>> SHAPES = shapes();

  private StrokeLetters() {}

  /** Width of so many letters in a line, mm. */
  static double width(int letters, double height) {
    return ((letters - 1) * ADVANCE + WIDE) * height / HIGH;
  }

  /**
   * The strokes of one line of words.
   *
   * @param at its top left, mm
   * @param height of a letter, mm
   */
  static List<Line> lines(String words, Vec at, double height) {
    double k = height / HIGH;
    List<Line> all = new ArrayList<>();
    String plain = Normalizer.normalize(words, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    for (int i = 0; i < plain.length(); i++) {
      Vec corner = at.plus(new Vec(i * ADVANCE * k, 0));
      for (Line stroke : SHAPES.getOrDefault(plain.charAt(i), List.of())) {
        all.add(new Line(stroke.points().stream().map(p -> corner.plus(p.times(k))).toList()));
      }
    }
    return all;
  }

  private static Map<Character, List<Line>> shapes() {
    Map<Character, List<Line>> all = new TreeMap<>();
    for (String glyph : GLYPHS) {
      List<Line> strokes = new ArrayList<>();
      for (String stroke : List.of(glyph.substring(1).split(" ", -1))) {
        List<Vec> points = new ArrayList<>();
        for (int i = 0; i + 1 < stroke.length(); i += 2) {
          points.add(
              new Vec(
                  Character.digit(stroke.charAt(i), 10),
                  Character.digit(stroke.charAt(i + 1), 10)));
        }
        strokes.add(new Line(points));
      }
      all.put(glyph.charAt(0), List.copyOf(strokes));
    }
    return SortedCopy.of(all);
  }
}
