package slabwright.desk.cards.inlay;

import java.util.Optional;
import slabwright.site.Overspray;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** Settings of the film and the spray with one thing changed. */
final class FilmSpecChange {
  private FilmSpecChange() {}

  public static StencilSpec usable(StencilSpec s, Optional<Length> v) {
    return make(s, v, s.overspray(), s.spread(), s.longestPiece(), s.vinylHolds());
  }

  public static StencilSpec overspray(StencilSpec s, Overspray v) {
    return make(s, s.usable(), v, s.spread(), s.longestPiece(), s.vinylHolds());
  }

  public static StencilSpec spread(StencilSpec s, Length v) {
    return make(s, s.usable(), s.overspray(), v, s.longestPiece(), s.vinylHolds());
  }

  public static StencilSpec longest(StencilSpec s, Optional<Length> v) {
    return make(s, s.usable(), s.overspray(), s.spread(), v, s.vinylHolds());
  }

  public static StencilSpec holds(StencilSpec s, Length v) {
    return make(s, s.usable(), s.overspray(), s.spread(), s.longestPiece(), v);
  }

  private static StencilSpec make(
      StencilSpec s,
      Optional<Length> usable,
      Overspray overspray,
      Length spread,
      Optional<Length> longest,
      Length holds) {
    return new StencilSpec(
        s.roll(),
        usable,
        s.overlap(),
        s.margin(),
        s.press(),
        overspray,
        s.colours(),
        s.mergeDeltaE(),
        spread,
        longest,
        holds,
        s.ties(),
        s.changes());
  }
}
