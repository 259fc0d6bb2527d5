package slabwright.work;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slabwright.inlay.DyeNames;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.site.ColourChoice;
import slabwright.site.Inlay;
import slabwright.units.Message;

/**
 * What an inlay asks of the crew. Areas in mm², lengths in mm.
 *
 * @param blank area of the vinyl, all stencils
 * @param film what comes off the roll for it
 * @param edges length of opening edges to press down, all stencils
 * @param skirt area of paper around the whole blank, for one stencil
 * @param dyes what each stencil takes, in laying order
 */
@RecordBuilder
public record InlayTakeoff(
    String id,
    String name,
    double blank,
    VinylFromRoll film,
    double edges,
    double skirt,
    List<StencilDye> dyes)
    implements InlayTakeoffBuilder.With {
  /**
   * Vinyl off the roll, all stencils, waste and overlaps included.
   *
   * @param length mm, 0 while the stencil is not laid out on the roll
   * @param roll width of the roll, mm
   */
  public record VinylFromRoll(double length, double roll) {
    /** In mm². */
    public double area() {
      return length * roll;
    }
  }

  /**
   * One stencil's dye.
   *
   * @param product id in the shop book, or empty for the finish system's inlay dye
   * @param openings mm² misted
   * @param edges mm of opening edges to press down
   * @param film area of the vinyl that it is cut out of: no bigger than its colour needs
   * @param paper area of paper around that
   * @param name what people call the colour; no two of an inlay are called the same
   */
  public record StencilDye(
      String colour,
      String product,
      double openings,
      double edges,
      double film,
      double paper,
      Message name) {
    StencilDye withProduct(String id) {
      return new StencilDye(colour, id, openings, edges, film, paper, name);
    }
  }

  public InlayTakeoff {
    dyes = List.copyOf(dyes);
  }

  /** From an inlay on the plan and what was computed of it. */
  public static InlayTakeoff of(Inlay inlay, InlayPlan plan) {
    List<StencilDye> dyes = new ArrayList<>();
    Map<String, Message> names = DyeNames.of(inlay, plan);
    for (Stencil s : plan.stencils().stencils()) {
      dyes.add(
          new StencilDye(
              s.colour(),
              product(inlay, s.colour()),
              s.openings().area(),
              s.cutLength(),
              plan.blankArea(s),
              plan.skirtArea(s),
              names.get(s.colour())));
    }
    double blank = dyes.stream().mapToDouble(StencilDye::film).sum();
    VinylFromRoll film = new VinylFromRoll(plan.rollLength(), inlay.spec().roll().mm());
    return new InlayTakeoff(
        inlay.id(), inlay.name(), blank, film, plan.cutLength(), plan.skirtArea(), dyes);
  }

  private static String product(Inlay inlay, String colour) {
    return inlay.spec().colours().stream()
        .filter(c -> c.colour().equals(colour))
        .map(ColourChoice::product)
        .findFirst()
        .orElse("");
  }

  /** Area of the floor that the largest stencil covers with its paper. */
  public double covered() {
    return dyes.stream().mapToDouble(d -> d.film() + d.paper()).max().orElse(0);
  }

  /** The same with a product for the colours that name none. */
  InlayTakeoff withDye(String product) {
    List<StencilDye> named =
        dyes.stream().map(d -> d.product().isEmpty() ? d.withProduct(product) : d).toList();
    return withDyes(named);
  }

  public double openings() {
    return dyes.stream().mapToDouble(StencilDye::openings).sum();
  }
}
