package slabwright.work.step;

/** What is done in a step, in about the order a crew does it. */
public enum StepKind {
  /** Unloading and setting up, once. */
  SET_UP,
  GRIND_TOP,
  GRIND_STEPS,
  LEVEL_TRENCH,
  /** A trench that lies low: filled, then ground flush. */
  FILL_TRENCH,
  TAKE_OFF_RESIDUE,
  METAL_PASS,
  /** Vacuuming between two grinding passes. */
  HEPA_PASS,
  /** Joints, cracks and spalls. */
  FILL_GAPS,
  FINE_PASS,
  CLEAN,
  /** A fan with its duct, once a floor area, before the first solvent on it. */
  SET_UP_FAN,
  /** A small field in the job's own colours, for the client to approve. */
  SAMPLE_PANEL,
  /** Film and tape along walls before anything is sprayed. */
  MASK_WALLS,
  COAT,
  /** What dye leaves lying on the floor. */
  DYE_RESIDUE_OFF,
  /** Film laid and pulled on the dyed floor. */
  TACK_TEST,
  /** The lines, corners and ticks of an inlay on the floor, before its first film. */
  SET_OUT,
  LAY_STENCIL,
  PRESS_EDGES,
  LAY_PAPER,
  MIST_COAT,
  PULL_UP_STENCIL,
  /** What a missed recoat window asks for before the next coat. */
  ABRADE,
  /** Packing up and leaving, once. */
  STRIKE;

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
      case SET_UP,
          HEPA_PASS,
          SET_UP_FAN,
          MASK_WALLS,
          STRIKE,
          FILL_GAPS,
          CLEAN,
          SAMPLE_PANEL,
          COAT,
          DYE_RESIDUE_OFF,
          TACK_TEST,
          SET_OUT,
          LAY_STENCIL,
          PRESS_EDGES,
          LAY_PAPER,
          MIST_COAT,
          PULL_UP_STENCIL,
          ABRADE ->
          false;
    };
  }

  /**
   * Whether it goes on from the step before without a stop and by its night: film that is not
   * pressed lifts at its edges.
   */
  public boolean belongsToTheStepBefore() {
    return this == PRESS_EDGES;
  }

  /** Whether the whole crew is on it, on no floor area. */
  public boolean isWholeCrew() {
    return this == SET_UP || this == STRIKE;
  }

  /** Whether it is presence and no progress on the floor. */
  public boolean isAround() {
    return isWholeCrew() || this == HEPA_PASS || this == SET_UP_FAN || this == MASK_WALLS;
  }
}
