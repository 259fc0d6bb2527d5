package slabwright;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Counts the house: {@code java src/test/java/slabwright/HouseCounts.java [FOLDER]} prints files,
 * lines, the largest folders, simple names that stand in more than one package, public types that
 * no file outside their package names, and packages without a map. Text only: nothing is compiled.
 */
final class HouseCounts {
  private static final Pattern PUBLIC_TYPE =
      Pattern.compile(
          "(?m)^public (?:(?:abstract|final|sealed|non-sealed) )*"
              + "(?:class|interface|record|enum) (\\w+)");

  private record Source(Path path, String text) {
    String folder() {
      return path.getParent().toString();
    }

    String name() {
      return path.getFileName().toString().replace(".java", "");
    }

    boolean isMap() {
      return name().equals("package-info");
    }
  }

  private HouseCounts() {}

  public static void main(String[] args) {
    Path root = Path.of(args.length > 0 ? args[0] : "src/main/java");
    List<Source> sources = read(root);
    Map<String, List<Source>> folders =
        sources.stream()
            .collect(Collectors.groupingBy(Source::folder, TreeMap::new, Collectors.toList()));
    System.out.println("files: " + sources.size());
    System.out.println("lines: " + sources.stream().mapToLong(s -> s.text().lines().count()).sum());
    System.out.println("largest folders: " + largest(folders));
    List<String> twice = twice(sources);
    System.out.println("names that stand twice: " + twice.size() + " " + twice);
    List<String> unused = unused(sources);
    System.out.println("public types unused outside: " + unused.size() + " " + unused);
    List<String> bare =
        folders.entrySet().stream()
            .filter(e -> e.getValue().stream().noneMatch(Source::isMap))
            .map(e -> root.relativize(Path.of(e.getKey())).toString())
            .toList();
    System.out.println("packages: " + folders.size() + ", without a map: " + bare.size());
  }

  private static List<Source> read(Path root) {
    try (Stream<Path> files = Files.walk(root)) {
      List<Source> out = new ArrayList<>();
      for (Path p : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        out.add(new Source(p, Files.readString(p)));
      }
      return out;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String largest(Map<String, List<Source>> folders) {
    return folders.values().stream()
        .sorted(Comparator.comparingInt((List<Source> l) -> -l.size()))
        .limit(6)
        .map(l -> l.size() + " " + l.get(0).path().getParent().getFileName())
        .collect(Collectors.joining(", "));
  }

  private static List<String> twice(List<Source> sources) {
    Map<String, Long> counts =
        sources.stream()
            .filter(s -> !s.isMap())
            .collect(Collectors.groupingBy(Source::name, TreeMap::new, Collectors.counting()));
    return counts.entrySet().stream().filter(e -> e.getValue() > 1).map(Map.Entry::getKey).toList();
  }

  private static List<String> unused(List<Source> sources) {
    List<String> out = new ArrayList<>();
    for (Source s : sources) {
      Matcher m = PUBLIC_TYPE.matcher(s.text());
      if (m.find() && !m.group(1).equals("Main")) {
        Pattern word = Pattern.compile("\\b" + m.group(1) + "\\b");
        boolean used =
            sources.stream()
                .anyMatch(o -> !o.folder().equals(s.folder()) && word.matcher(o.text()).find());
        if (!used) {
          out.add(m.group(1));
        }
      }
    }
    return List.copyOf(new TreeSet<>(out));
  }
}
