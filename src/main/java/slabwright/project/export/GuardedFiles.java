package slabwright.project.export;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.PartFaults;

/**
 * Files of which each is made by itself: one that a fault ends is told and left out, the others are
 * still added.
 *
 * @param into where they go
 * @param faults told of those that could not be made
 */
record GuardedFiles(FileSink into, PartFaults faults) {
  /** Adds a file. */
  void add(String name, PartFaults.FilePart<byte[]> maker) {
    Optional<byte[]> made =
        faults.makeOfFiles(
            Message.of("project.guarded-files.file", name),
            false,
            () -> Optional.of(maker.make()),
            Optional::empty);
    made.ifPresent(bytes -> into.add(name, bytes));
  }

  /** Adds a text file in UTF-8. */
  void text(String name, PartFaults.FilePart<String> maker) {
    add(name, () -> maker.make().getBytes(StandardCharsets.UTF_8));
  }

  /** Files that are nothing without each other. */
  @FunctionalInterface
  interface Together<T> {
    /**
     * Adds them.
     *
     * @throws java.io.IOException when a file breaks
     */
    T addTo(FileSink into) throws java.io.IOException;
  }

  /** Adds files that belong together: all of them or none. */
  <T> T together(Message what, Together<T> maker, T otherwise) {
    Map<String, byte[]> made = new LinkedHashMap<>();
    Optional<T> done =
        faults.makeOfFiles(what, false, () -> Optional.of(maker.addTo(made::put)), Optional::empty);
    if (done.isPresent()) {
      made.forEach(into::add);
    }
    return done.orElse(otherwise);
  }
}
