package slabwright.inlay.proof;

import slabwright.shape.Vec;

/** Something in the shop's drawing that must be put right before cutting. */
public sealed interface ProofFault {
  /** One sentence for the person. */
  String sentence();

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
      return "An opening of %.0f cm² is missing, %s.".formatted(area / 100, at(place));
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
      return "An opening of %.0f cm² is added, %s.".formatted(area / 100, at(place));
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

  private static String at(Vec p) {
    return "%.0f mm from the left and %.0f mm from the top of the blank".formatted(p.x(), p.y());
  }
}
