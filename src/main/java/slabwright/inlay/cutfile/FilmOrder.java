package slabwright.inlay.cutfile;

/**
 * What the sign shop needs to know besides the cut files.
 *
 * @param rollWidth of the film, mm
 * @param kind of film; empty when not decided
 * @param tack how strongly it sticks; empty when not decided
 * @param quantity how many of each panel
 */
public record FilmOrder(double rollWidth, String kind, String tack, int quantity) {
  /** One set on a roll of this width, kind and tack to be agreed. */
  public static FilmOrder onRoll(double mm) {
    return new FilmOrder(mm, "", "", 1);
  }
}
