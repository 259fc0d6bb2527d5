package slabwright.work.coat;

/**
 * A film's thickness in mm.
 *
 * @param wet as laid
 * @param dry when set
 */
public record FilmThickness(double wet, double dry) {
  /**
   * From a coverage in mm²/mm³ and the volume solids: the wet film is one over the coverage, the
   * dry film wet × solids. So 1 US gal lies 1 mil wet on 1604 ft².
   */
  public static FilmThickness of(double coverage, double solids) {
    return new FilmThickness(1 / coverage, solids / coverage);
  }

  /**
   * What a volume covers at a dry thickness: solids × (1 − loss) / dry.
   *
   * @param loss share that does not reach the floor
   */
  public static double coverageAt(double dry, double solids, double loss) {
    return solids * (1 - loss) / dry;
  }
}
