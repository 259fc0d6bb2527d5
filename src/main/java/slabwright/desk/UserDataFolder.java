package slabwright.desk;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * Where the desk keeps its own things.
 *
 * @param data the user's data folder for this program; made when first needed
 */
record UserDataFolder(Path data) {
  /** The data folder that the system names for this user. */
  public static UserDataFolder ofUser() {
    String home = System.getProperty("user.home", ".");
    String os = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    Path base =
        os.contains("win")
            ? env("APPDATA").orElse(Path.of(home, "AppData", "Roaming"))
            : os.contains("mac")
                ? Path.of(home, "Library", "Application Support")
                : env("XDG_DATA_HOME").orElse(Path.of(home, ".local", "share"));
    return new UserDataFolder(base.resolve("slabwright"));
  }

  private static Optional<Path> env(String name) {
    return Optional.ofNullable(System.getenv(name)).filter(v -> !v.isBlank()).map(Path::of);
  }

  Path settings() {
    return data.resolve("desk.properties");
  }
}
