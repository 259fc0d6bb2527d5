package slabwright.inlay.artwork.batik;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Some two thousand real drawings: the Bootstrap Icons, MIT licence, a test-scope dependency. */
public final class Icons {
  private static final String FOLDER = "/META-INF/resources/webjars/bootstrap-icons/1.13.1/icons";

  private Icons() {}

  /** Every icon's text by its file name, in the names' order. */
  public static Map<String, byte[]> all() {
    try {
      URI one = Icons.class.getResource(FOLDER + "/heart.svg").toURI();
      URI jar = URI.create(one.toString().replaceFirst("!.*", ""));
      try (FileSystem files = FileSystems.newFileSystem(jar, Map.of());
          Stream<Path> list = Files.list(files.getPath(FOLDER))) {
        Map<String, byte[]> icons = new TreeMap<>();
        for (Path p : list.filter(p -> p.toString().endsWith(".svg")).toList()) {
          icons.put(p.getFileName().toString(), Files.readAllBytes(p));
        }
        return icons;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** One icon's text. */
  public static byte[] one(String name) {
    try (InputStream in = Icons.class.getResourceAsStream(FOLDER + "/" + name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
