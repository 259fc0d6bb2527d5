package slabwright.inlay.proof;

/** Something about the shop's drawing that is no fault, or that can't be told. */
public sealed interface ProofNote {
  /** One sentence for the person. */
  String sentence();

  /**
   * The drawing is turned; it cuts the same.
   *
   * @param degrees clockwise as drawn, 0 to 360
   */
  record Turned(double degrees) implements ProofNote {
    @Override
    public String sentence() {
      return "The drawing is turned by %.1f° clockwise; this cuts the same.".formatted(degrees);
    }
  }

  /** Nothing says what is pulled out. */
  record PolarityCannotBeTold(boolean shaded) implements ProofNote {
    @Override
    public String sentence() {
      return shaded
          ? "Polarity cannot be told: ask the shop whether shading is pulled out or stays."
          : "Polarity cannot be told: the drawing has lines only; ask for a shaded one.";
    }
  }

  /** The graphic is its own mirror image. */
  record MirroringCannotBeTold() implements ProofNote {
    @Override
    public String sentence() {
      return "Mirroring cannot be told: the graphic is (nearly) its own mirror image.";
    }
  }

  /** The graphic looks the same turned by some angle. */
  record TurnCannotBeTold() implements ProofNote {
    @Override
    public String sentence() {
      return "The turn cannot be told: the graphic looks (nearly) the same turned.";
    }
  }

  /** Panels lie apart in the drawing. */
  record PanelsApart(int count) implements ProofNote {
    @Override
    public String sentence() {
      return "The %d panels lie apart in the drawing; each was checked by itself.".formatted(count);
    }
  }

  /** Things beside the stencil were taken for the shop's labels. */
  record BesideIgnored(int count) implements ProofNote {
    @Override
    public String sentence() {
      return "%d outlines beside the stencil were taken for labels.".formatted(count);
    }
  }
}
