package slabwright.project;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The sample plans. Each opens as a copy in the data folder, so that the shipped one stays whole.
 */
public final class SamplePlans {
  private static final List<String> TRAM_HALL = List.of("tram-hall.site.json", "heron-ring.svg");

  private final Path data;

  public SamplePlans(Path data) {
    this.data = data;
  }

  /**
   * A copy of the tram hall, to be opened; empty when the program came without samples.
   *
   * @throws IOException when the copy cannot be made
   */
  public Optional<Path> tramHall() throws IOException {
    Path folder = data.resolve("samples").resolve("tram-hall");
    Files.createDirectories(folder);
    for (String name : TRAM_HALL) {
      if (!copy(name, folder.resolve(name))) {
        return Optional.empty();
      }
    }
    return Optional.of(folder.resolve(TRAM_HALL.get(0)));
  }

  private static boolean copy(String name, Path to) throws IOException {
    if (Files.exists(to)) {
      return true;
    }
    try (InputStream in = SamplePlans.class.getResourceAsStream("/sample-plans/" + name)) {
      if (in != null) {
        Files.copy(in, to);
        return true;
      }
    }
    Path beside = Path.of("sample-plans", name);
    if (Files.isReadable(beside)) {
      Files.copy(beside, to);
      return true;
    }
    return false;
  }
}
