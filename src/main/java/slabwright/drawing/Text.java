package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * One run of words on one line.
 *
 * @param at the anchor on the baseline
 * @param turn degrees counter-clockwise as seen, about the anchor
 */
public record Text(Vec at, String words, TextStyle style, Anchor anchor, double turn)
    implements PrimitiveInk {
  /** Which point of the run lies at {@code at}. */
  public enum Anchor {
    START,
    MIDDLE,
    END;

    /** The share of the width that lies before the anchor. */
    public double shareBefore() {
      return switch (this) {
        case START -> 0;
        case MIDDLE -> 0.5;
        case END -> 1;
      };
    }
  }

  public static Text start(Vec at, String words, TextStyle style) {
    return new Text(at, words, style, Anchor.START, 0);
  }

  public static Text middle(Vec at, String words, TextStyle style) {
    return new Text(at, words, style, Anchor.MIDDLE, 0);
  }

  public static Text end(Vec at, String words, TextStyle style) {
    return new Text(at, words, style, Anchor.END, 0);
  }

  /** Paper frame only: capitals stand centred on the point, both ways, at any turn. */
  public static Text centred(Vec at, String words, TextStyle style, double turn) {
    double down = TextMeasure.CAP_HEIGHT * style.size() / 2;
    double a = Math.toRadians(turn);
    Vec foot = new Vec(at.x() + Math.sin(a) * down, at.y() + Math.cos(a) * down);
    return new Text(foot, words, style, Anchor.MIDDLE, turn);
  }

  @Override
  public Text placed(View view) {
    return new Text(view.onPaper(at), words, style.placed(view), anchor, turn + view.turnDegrees());
  }

  @Override
  public void paintOn(Painter painter) {
    painter.text(this);
  }

  @Override
  public Bounds reach() {
    return Bounds.of(List.of(at));
  }
}
