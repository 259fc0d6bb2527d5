package slabwright.desk.cards.inlay;

import java.util.List;
import slabwright.site.ColourChoice;
import slabwright.site.Overspray;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** Stencil settings with one thing changed. */
final class StencilSpecChange {
  private StencilSpecChange() {}

  public static StencilSpec roll(StencilSpec s, Length v) {
    return make(s, v, s.overlap(), s.margin(), s.press(), s.overspray(), s.colours());
  }

  public static StencilSpec overlap(StencilSpec s, Length v) {
    return make(s, s.roll(), v, s.margin(), s.press(), s.overspray(), s.colours());
  }

  public static StencilSpec margin(StencilSpec s, Length v) {
    return make(s, s.roll(), s.overlap(), v, s.press(), s.overspray(), s.colours());
  }

  public static StencilSpec press(StencilSpec s, Length v) {
    return make(s, s.roll(), s.overlap(), s.margin(), v, s.overspray(), s.colours());
  }

  public static StencilSpec colours(StencilSpec s, List<ColourChoice> v) {
    return make(s, s.roll(), s.overlap(), s.margin(), s.press(), s.overspray(), v);
  }

  private static StencilSpec make(
      StencilSpec s,
      Length roll,
      Length overlap,
      Length margin,
      Length press,
      Overspray overspray,
      List<ColourChoice> colours) {
    return new StencilSpec(
        roll,
        s.usable().filter(u -> u.mm() <= roll.mm()),
        overlap,
        margin,
        press,
        overspray,
        colours,
        s.mergeDeltaE(),
        s.spread(),
        s.longestPiece(),
        s.vinylHolds(),
        s.ties(),
        s.changes());
  }
}
