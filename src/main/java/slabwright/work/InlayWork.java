package slabwright.work;

import java.util.List;

/**
 * What an inlay asks of the crew. Areas in mm², lengths in mm.
 *
 * @param blank area of the vinyl, all stencils
 * @param edges length of opening edges to press down, all stencils
 * @param skirt area of paper around it
 * @param dyes what each stencil takes, in laying order
 */
public record InlayWork(
    String id, String name, double blank, double edges, double skirt, List<Dye> dyes) {
  /**
   * One stencil's dye.
   *
   * @param product id in the shop book, or empty for the finish system's inlay dye
   * @param openings mm² misted
   */
  public record Dye(String colour, String product, double openings) {}

  public InlayWork {
    dyes = List.copyOf(dyes);
  }

  public double openings() {
    return dyes.stream().mapToDouble(Dye::openings).sum();
  }
}
