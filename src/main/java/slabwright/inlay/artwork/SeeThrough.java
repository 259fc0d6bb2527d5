package slabwright.inlay.artwork;

import slabwright.inlay.artwork.ArtworkQuestion.Kind;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Paint that lets through what is under it. A stencil cannot do that: it counts as painted, and
 * what is so thin that it hardly shows is a colour of its own (as on white paper), so that it can
 * be left out without the solid parts of the same paint.
 */
public final class SeeThrough {
  /** Fainter than this is asked about; our own choice, no source. */
  private static final double VEIL = 0.4;

  private static final double SOLID = 0.999;

  private SeeThrough() {}

  /**
   * The colour that the paint counts as, {@code #rrggbb}.
   *
   * @param alpha 0 see-through to 1 solid, the paint's own and that of all around it
   * @param place in the page's pixels
   */
  public static String colour(Rgba paint, double alpha, Vec place, WarningCollector notes) {
    if (alpha >= SOLID) {
      return paint.hex();
    }
    notes.add(
        ArtworkWarning.Kind.SEE_THROUGH, Message.of("inlay.scene-visitor.see-through"), place);
    if (alpha >= VEIL) {
      return paint.hex();
    }
    String seen = onWhite(paint, alpha).hex();
    notes.ask(
        Kind.VEIL,
        Message.of("inlay.artwork-question.veil", paint.hex(), Math.round(100 * alpha), seen),
        seen,
        place);
    return seen;
  }

  private static Rgba onWhite(Rgba c, double alpha) {
    return new Rgba(mixed(c.r(), alpha), mixed(c.g(), alpha), mixed(c.b(), alpha), 1);
  }

  private static int mixed(int channel, double alpha) {
    return (int) Math.round(alpha * channel + (1 - alpha) * 255);
  }
}
