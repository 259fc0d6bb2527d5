package slabwright.desk.cards;

import javafx.scene.canvas.Canvas;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.desk.model.DeskContext;
import slabwright.drawing.Drawing;

/** A drawing on a card, as wide as the card. */
public final class PictureRow {
  private static final double WIDE = 306;

  /** The width that a drawing is made for, mm of paper. */
  public static final double WIDTH = WIDE / FxPainter.SCREEN;

  private PictureRow() {}

  public static Canvas of(Drawing drawing, DeskContext bench, String words) {
    return of(drawing, WIDE, bench, words);
  }

  /**
   * A drawing of another width.
   *
   * @param wide in pixels of the screen
   */
  public static Canvas of(Drawing drawing, double wide, DeskContext bench, String words) {
    Canvas canvas = new Canvas(wide, drawing.bounds().height() * FxPainter.SCREEN);
    canvas.setAccessibleText(words);
    Tone tone = bench.settings().dark() ? Tone.DARK : Tone.LIGHT;
    FxPainter painter = new FxPainter(canvas.getGraphicsContext2D(), FxPainter.SCREEN, tone);
    drawing.paintOn(painter, drawing.bounds());
    return canvas;
  }
}
