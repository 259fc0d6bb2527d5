package slabwright.inlay.proof;

import slabwright.shape.Vec;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** Something in the shop's drawing that must be put right before cutting. */
public sealed interface ProofFault {
  /** One sentence for the person, lengths in millimetres. */
  String sentence();

  /** One sentence for the person, lengths in the units that the site shows. */
  default String sentence(UnitSystem units) {
    return sentence();
  }

  /** The drawing is a mirror image of the plan. */
  record Mirrored() implements ProofFault {
    @Override
    public String sentence() {
      return "The drawing is mirrored: lettering would read backwards on the floor.";
    }
  }

  /**
   * The drawing has another size than the plan.
   *
   * @param percent of the plan's size, plus when the drawing is too large
   */
  record WrongSize(double percent) implements ProofFault {
    @Override
    public String sentence() {
      return "The drawing is %.1f %% too %s."
          .formatted(Math.abs(percent), percent > 0 ? "large" : "small");
    }
  }

  /** What should be pulled out stays, and the other way round. */
  record Exchanged() implements ProofFault {
    @Override
    public String sentence() {
      return "What is pulled out and what stays are exchanged.";
    }
  }

  /**
   * The outer edge of the blank or of a panel is not drawn.
   *
   * @param panel from 1, or 0 for the whole blank
   */
  record EdgeMissing(int panel) implements ProofFault {
    @Override
    public String sentence() {
      return panel == 0
          ? "The blank's outer edge is not drawn."
          : "The outer edge of panel " + panel + " is not drawn.";
    }
  }

  /**
   * An opening of the plan, or a part of one, that is not in the drawing.
   *
   * @param place in the blank's frame, mm
   * @param area mm²
   */
  record PieceMissing(Vec place, double area) implements ProofFault {
    @Override
    public String sentence() {
      return sentence(UnitSystem.METRIC);
    }

    @Override
    public String sentence(UnitSystem units) {
      return "An opening of %s is missing, %s.".formatted(size(area, units), at(place, units));
    }
  }

  /**
   * An opening in the drawing that is not in the plan.
   *
   * @param place in the blank's frame, mm
   * @param area mm²
   */
  record PieceAdded(Vec place, double area) implements ProofFault {
    @Override
    public String sentence() {
      return sentence(UnitSystem.METRIC);
    }

    @Override
    public String sentence(UnitSystem units) {
      return "An opening of %s is added, %s.".formatted(size(area, units), at(place, units));
    }
  }

  /**
   * The plan's graphic was not found in the drawing.
   *
   * @param overlap best share found, 0 to 1
   */
  record NotFound(double overlap) implements ProofFault {
    @Override
    public String sentence() {
      return "The graphic is not found in the drawing (best overlap %.0f %%); ask the shop for the"
              .formatted(overlap * 100)
          + " outlines of this stencil.";
    }
  }

  private static String size(double area, UnitSystem units) {
    return units == UnitSystem.METRIC
        ? "%.0f cm²".formatted(area / 100)
        : "%.1f sq in".formatted(area / (25.4 * 25.4));
  }

  private static String at(Vec p, UnitSystem units) {
    return "%s from the left and %s from the top of the blank"
        .formatted(length(p.x(), units), length(p.y(), units));
  }

  private static String length(double mm, UnitSystem units) {
    return units == UnitSystem.METRIC ? "%.0f mm".formatted(mm) : LengthFormat.show(mm, units);
  }
}
