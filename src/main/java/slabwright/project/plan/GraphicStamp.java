package slabwright.project.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * What tells without reading it whether a graphic may have changed.
 *
 * @param changed when it was last written; empty when it is not there
 * @param bytes its size; 0 when it is not there
 */
public record GraphicStamp(Path file, Optional<FileTime> changed, long bytes) {
  static GraphicStamp of(Path file) {
    try {
      return new GraphicStamp(file, Optional.of(Files.getLastModifiedTime(file)), Files.size(file));
    } catch (IOException e) {
      return new GraphicStamp(file, Optional.empty(), 0);
    }
  }
}
