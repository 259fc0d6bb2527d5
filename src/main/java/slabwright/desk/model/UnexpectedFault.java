package slabwright.desk.model;

/** Faults of the program itself, told to the person without hiding them. */
public final class UnexpectedFault {
  private UnexpectedFault() {}

  /** What stands in brackets in the sentence about it. */
  public static String text(RuntimeException e) {
    String kind = e.getClass().getSimpleName();
    return e.getMessage() == null ? kind : kind + ": " + e.getMessage();
  }
}
