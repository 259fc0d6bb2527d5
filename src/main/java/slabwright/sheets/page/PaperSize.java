package slabwright.sheets.page;

import java.util.Locale;
import java.util.Optional;
import slabwright.shape.Bounds;

/**
 * The papers that sheets are made for, lying with the long side level. Sizes in mm: ISO 216 for the
 * A papers; ANSI/ASME Y14.1 (A and B) for Letter and Tabloid; the ARCH series for C and D.
 */
public enum PaperSize {
  LETTER("Letter", 11 * 25.4, 8.5 * 25.4, true),
  TABLOID("Tabloid", 17 * 25.4, 11 * 25.4, true),
  ARCH_C("ARCH C", 24 * 25.4, 18 * 25.4, true),
  ARCH_D("ARCH D", 36 * 25.4, 24 * 25.4, true),
  A4("A4", 297, 210, false),
  A3("A3", 420, 297, false),
  A1("A1", 841, 594, false);

  private final String word;
  private final double width;
  private final double height;
  private final boolean inches;

  PaperSize(String word, double width, double height, boolean inches) {
    this.word = word;
    this.width = width;
    this.height = height;
    this.inches = inches;
  }

  /** The name as printed. */
  public String word() {
    return word;
  }

  /** The long side in mm. */
  public double width() {
    return width;
  }

  /** The short side in mm. */
  public double height() {
    return height;
  }

  /** Whether its size is given in inches, so that its check line is too. */
  public boolean inches() {
    return inches;
  }

  /** The paper that people hold in one hand and have at home, of the same family. */
  public PaperSize handSize() {
    return inches ? LETTER : A4;
  }

  Bounds bounds() {
    return new Bounds(0, 0, width, height);
  }

  /** The paper of that name, however its capitals, spaces and dashes are written. */
  public static Optional<PaperSize> named(String name) {
    String wanted = plain(name);
    for (PaperSize p : values()) {
      if (plain(p.word).equals(wanted)) {
        return Optional.of(p);
      }
    }
    return Optional.empty();
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
  }
}
