package slabwright.units;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;

/**
 * The parts of one piece of work that broke: a fault in one is kept to be told, and the others are
 * still done. For one thread.
 */
public final class PartFaults {
  /**
   * A part that could not be done.
   *
   * @param part what it was
   * @param safety whether somebody may come to harm who doesn't know that it is missing
   * @param why what is known of the fault
   */
  public record PartFault(Message part, boolean safety, String why) {
    /** What is missing and what to do. */
    public Message sentence() {
      return Message.of("units.part-faults.not-made", part, why);
    }
  }

  /** A part that reads files. */
  @FunctionalInterface
  public interface FilePart<T> {
    /**
     * Makes it.
     *
     * @throws IOException when a file breaks
     */
    T make() throws IOException;
  }

  private final List<PartFault> all = new ArrayList<>();

  /** Makes a part; what stands in its place where a fault of the program ends it. */
  public <T> T make(Message part, boolean safety, Supplier<T> maker, Supplier<T> otherwise) {
    try {
      return maker.get();
    } catch (CancellationException e) {
      throw e;
    } catch (RuntimeException e) {
      all.add(new PartFault(part, safety, text(e)));
      return otherwise.get();
    }
  }

  /** Makes a part that reads files, which may break as well. */
  public <T> T makeOfFiles(Message part, boolean safety, FilePart<T> maker, Supplier<T> otherwise) {
    try {
      return maker.make();
    } catch (CancellationException e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      all.add(new PartFault(part, safety, text(e)));
      return otherwise.get();
    }
  }

  private static String text(Exception e) {
    String kind = e.getClass().getSimpleName();
    return e.getMessage() == null ? kind : kind + ": " + e.getMessage();
  }

  /** Takes over what broke in a part that was made elsewhere. */
  public void addAll(List<PartFault> others) {
    all.addAll(others);
  }

  /** What broke, those first that somebody may come to harm by. */
  public List<PartFault> all() {
    List<PartFault> first = new ArrayList<>(all.stream().filter(PartFault::safety).toList());
    all.stream().filter(f -> !f.safety()).forEach(first::add);
    return List.copyOf(first);
  }
}
