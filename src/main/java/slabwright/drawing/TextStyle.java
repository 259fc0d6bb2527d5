package slabwright.drawing;

/**
 * How words look.
 *
 * @param size the em in millimetres, of paper or of the model
 */
public record TextStyle(double size, boolean bold, Colour colour, Measure measure) {
  /** What a text size is measured on. */
  public enum Measure {
    PAPER,
    MODEL
  }

  public static TextStyle plain(double size) {
    return new TextStyle(size, false, Palette.INK, Measure.PAPER);
  }

  public static TextStyle bold(double size) {
    return new TextStyle(size, true, Palette.INK, Measure.PAPER);
  }

  public TextStyle in(Colour other) {
    return new TextStyle(size, bold, other, measure);
  }

  public TextStyle sized(double mm) {
    return new TextStyle(mm, bold, colour, measure);
  }

  /** The same look, its size measured on the floor: it grows and shrinks with the scale. */
  public TextStyle onModel() {
    return new TextStyle(size, bold, colour, Measure.MODEL);
  }

  TextStyle placed(View view) {
    return measure == Measure.PAPER
        ? this
        : new TextStyle(size * view.scale(), bold, colour, Measure.PAPER);
  }
}
