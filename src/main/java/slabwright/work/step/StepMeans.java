package slabwright.work.step;

/** Whether a step is done with a machine that one walks behind, or by hand. */
public enum StepMeans {
  MACHINE,
  HAND
}
