package slabwright.work.step;

/** What is done in a step, in about the order a crew does it. */
public enum StepKind {
  GRIND_TOP,
  GRIND_STEPS,
  LEVEL_TRENCH,
  /** A trench that lies low: filled, then ground flush. */
  FILL_TRENCH,
  TAKE_OFF_RESIDUE,
  METAL_PASS,
  /** Joints, cracks and spalls. */
  FILL_GAPS,
  FINE_PASS,
  CLEAN,
  COAT,
  LAY_STENCIL,
  MIST_COAT,
  PULL_UP_STENCIL,
  /** What a missed recoat window asks for before the next coat. */
  ABRADE;

  /** Whether it takes concrete off, and so sets silica free. */
  public boolean grindsConcrete() {
    return switch (this) {
      case GRIND_TOP,
          GRIND_STEPS,
          LEVEL_TRENCH,
          FILL_TRENCH,
          TAKE_OFF_RESIDUE,
          METAL_PASS,
          FINE_PASS ->
          true;
      case FILL_GAPS, CLEAN, COAT, LAY_STENCIL, MIST_COAT, PULL_UP_STENCIL, ABRADE -> false;
    };
  }
}
