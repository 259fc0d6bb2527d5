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
  /** A small field in the job's own colours, for the client to approve. */
  SAMPLE_PANEL,
  COAT,
  /** What dye leaves lying on the floor. */
  DYE_RESIDUE_OFF,
  /** Film laid and pulled on the dyed floor. */
  TACK_TEST,
  LAY_STENCIL,
  PRESS_EDGES,
  LAY_PAPER,
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
      case FILL_GAPS,
          CLEAN,
          SAMPLE_PANEL,
          COAT,
          DYE_RESIDUE_OFF,
          TACK_TEST,
          LAY_STENCIL,
          PRESS_EDGES,
          LAY_PAPER,
          MIST_COAT,
          PULL_UP_STENCIL,
          ABRADE ->
          false;
    };
  }
}
