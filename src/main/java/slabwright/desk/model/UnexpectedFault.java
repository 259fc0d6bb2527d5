package slabwright.desk.model;

/** Faults of the program itself, said to the person without hiding them. */
public final class UnexpectedFault {
  private UnexpectedFault() {}

  /** A sentence for a fault that should not happen. */
  public static String refusal(String doing, RuntimeException e) {
    return "Could not "
        + doing
        + " ("
        + e.getClass().getSimpleName()
        + (e.getMessage() == null ? "" : ": " + e.getMessage())
        + "); undo the last step and please report this.";
  }
}
