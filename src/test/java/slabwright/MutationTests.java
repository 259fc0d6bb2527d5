package slabwright;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Prints which tests small faults are tried against: {@code java
 * src/test/java/slabwright/MutationTests.java slabwright.floor} for a room, or with names of
 * classes (comma between them) for these alone. Named are test classes that stand in the same
 * package as one of those classes or whose text names one, and that took less than two seconds in
 * the last test run (system property {@code reports}, usually target/surefire-reports; {@code
 * most}, in seconds). Window tests are left out. Text only: nothing is compiled.
 */
final class MutationTests {
  private static final Path MAIN = Path.of("src/main/java");
  private static final Path TESTS = Path.of("src/test/java");
  private static final Pattern CASE = Pattern.compile("<testcase [^>]*>");
  private static final Pattern WORD = Pattern.compile("\\w+");

  private MutationTests() {}

  public static void main(String[] args) {
    if (args.length != 1) {
      System.err.println("A package or class, e.g. slabwright.floor");
      System.exit(2);
    }
    List<String> targets = targets(List.of(args[0].split(",", -1)));
    Map<String, Double> seconds =
        seconds(Path.of(System.getProperty("reports", "target/surefire-reports")));
    double most = Double.parseDouble(System.getProperty("most", "2"));
    String quick =
        tests(targets).stream()
            .filter(test -> seconds.getOrDefault(test, Double.MAX_VALUE) < most)
            .collect(Collectors.joining(","));
    System.out.println(quick);
  }

  /** Classes of the program that are one of the names or stand in or below a package so named. */
  private static List<String> targets(List<String> names) {
    return javaFiles(MAIN).stream()
        .map(file -> className(MAIN, file))
        .filter(type -> names.stream().anyMatch(n -> type.equals(n) || type.startsWith(n + ".")))
        .toList();
  }

  private static List<String> tests(List<String> targets) {
    TreeSet<String> packages = new TreeSet<>();
    TreeSet<String> simple = new TreeSet<>();
    for (String target : targets) {
      packages.add(packageOf(target));
      simple.add(target.substring(target.lastIndexOf('.') + 1));
    }
    return javaFiles(TESTS).stream()
        .filter(file -> !className(TESTS, file).startsWith("slabwright.desk"))
        .filter(
            file ->
                packages.contains(packageOf(className(TESTS, file)))
                    || WORD.matcher(text(file))
                        .results()
                        .map(w -> w.group())
                        .anyMatch(simple::contains))
        .map(file -> className(TESTS, file))
        .toList();
  }

  /** How long each test class took; the classes nested in one count with it. */
  private static Map<String, Double> seconds(Path reports) {
    Map<String, Double> sums = new TreeMap<>();
    try (Stream<Path> files = Files.walk(reports)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".xml")).toList()) {
        Matcher one = CASE.matcher(text(file));
        while (one.find()) {
          String type = attribute(one.group(), "classname").replaceFirst("\\$.*", "");
          sums.merge(type, Double.valueOf(attribute(one.group(), "time")), Double::sum);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("Run the tests first: " + reports, e);
    }
    return sums;
  }

  private static String attribute(String tag, String name) {
    Matcher found = Pattern.compile(" " + name + "=\"([^\"]*)\"").matcher(tag);
    return found.find() ? found.group(1) : "";
  }

  private static String packageOf(String type) {
    return type.substring(0, type.lastIndexOf('.'));
  }

  private static String className(Path root, Path file) {
    String path = root.relativize(file).toString();
    return path.substring(0, path.length() - ".java".length()).replace('\\', '.').replace('/', '.');
  }

  private static List<Path> javaFiles(Path root) {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(f -> f.toString().endsWith(".java") && !f.endsWith("package-info.java"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
