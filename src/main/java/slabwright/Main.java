package slabwright;

/** The one way in: with arguments the command line, without them the desk. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.out.println("Slabwright");
  }
}
