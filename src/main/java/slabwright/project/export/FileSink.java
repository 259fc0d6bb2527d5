package slabwright.project.export;

import java.nio.charset.StandardCharsets;

/** Where the files of an export are put, by name, before any is written. */
@FunctionalInterface
interface FileSink {
  /** Adds a file; a slash in its name stands between folders. */
  void add(String name, byte[] bytes);

  /** Adds a text file in UTF-8. */
  default void add(String name, String text) {
    add(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Puts files into a folder of this one. */
  default FileSink folder(String folder) {
    return (name, bytes) -> add(folder + "/" + name, bytes);
  }
}
