package slabwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.cli.SlabwrightCommand;

/** What the guide in docs/guide says is so: its commands, figures, links and worked examples. */
class GuideTest {
  private static final Path GUIDE = Path.of("docs/guide");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```$");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)\\)");
  private static final Pattern NAMED_TEST = Pattern.compile("`(\\w+(?:Test|Properties))`");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir Path folder;

  /** A fenced part of a page. */
  private record Block(String kind, String text) {}

  static Stream<Path> pages() throws IOException {
    try (Stream<Path> all = Files.list(GUIDE)) {
      return all.filter(p -> p.toString().endsWith(".md")).sorted().toList().stream();
    }
  }

  private static List<Block> blocks(Path page) throws IOException {
    return BLOCK
        .matcher(Files.readString(page))
        .results()
        .map(m -> new Block(m.group(1), m.group(2)))
        .toList();
  }

  @Test
  void each_command_ends_well_and_says_what_the_guide_quotes() throws IOException {
    copySamples();
    String said = "";
    int commands = 0;
    for (Block block : blocks(GUIDE.resolve("README.md"))) {
      if (block.kind().equals("sh")) {
        StringBuilder out = new StringBuilder();
        for (String line : block.text().lines().toList()) {
          out.append(run(line));
          commands++;
        }
        said = out.toString();
      } else {
        assertThat(said).contains(block.text().lines().map(String::strip).toList());
      }
    }
    assertThat(commands).isGreaterThan(9);
    assertThat(folder.resolve("out/bike-workshop/index.html")).exists();
    assertThat(folder.resolve("out/floor.png")).exists();
  }

  private void copySamples() throws IOException {
    Path to = Files.createDirectories(folder.resolve("sample-plans"));
    try (Stream<Path> all = Files.list(Path.of("sample-plans"))) {
      for (Path p : all.toList()) {
        Files.copy(p, to.resolve(p.getFileName().toString()));
      }
    }
  }

  /** Runs one line with its paths in a folder of the test's own; gives all that it said. */
  private String run(String line) {
    List<String> args = new ArrayList<>();
    Matcher words = WORD.matcher(line);
    while (words.find()) {
      String word = words.group(1) == null ? words.group(2) : words.group(1);
      boolean path = word.startsWith("out/") || word.startsWith("sample-plans/");
      args.add(path ? folder.resolve(word).toString() : word);
    }
    assertThat(args.remove(0)).isEqualTo("slabwright");
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        SlabwrightCommand.run(
            new PrintWriter(out), new PrintWriter(err), args.toArray(String[]::new));
    assertThat(code).as("%s: %s", line, err).isZero();
    return out.toString();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void what_a_page_links_to_is_there(Path page) throws IOException {
    List<String> links =
        LINK.matcher(Files.readString(page)).results().map(m -> m.group(1)).toList();
    assertThat(links).isNotEmpty().allMatch(l -> Files.exists(GUIDE.resolve(l)));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void each_test_that_a_page_names_is_there(Path page) throws IOException {
    Set<String> tests;
    try (Stream<Path> all = Files.walk(Path.of("src/test/java"))) {
      tests =
          all.map(p -> p.getFileName().toString().replace(".java", "")).collect(Collectors.toSet());
    }
    assertThat(NAMED_TEST.matcher(Files.readString(page)).results().map(m -> m.group(1)).toList())
        .allMatch(tests::contains);
  }

  @Test
  void the_smallest_plan_is_read_and_has_the_net_floor_that_is_said() throws IOException {
    Path page = GUIDE.resolve("plan-file.md");
    String plan =
        blocks(page).stream().filter(b -> b.kind().equals("json")).findFirst().orElseThrow().text();
    Path file = Files.writeString(folder.resolve("trial.site.json"), plan);
    String said = run("slabwright tally " + file);
    assertThat(Files.readString(page)).contains("net floor is 12.00 m²");
    assertThat(said).containsPattern("net floor +12\\.00 m²");
  }

  @Test
  void every_line_of_arithmetic_is_right_to_its_last_digit() throws IOException {
    List<String> lines =
        blocks(GUIDE.resolve("computations.md")).stream()
            .filter(b -> b.kind().equals("arithmetic"))
            .flatMap(b -> b.text().lines())
            .toList();
    assertThat(lines).hasSizeGreaterThan(5);
    for (String line : lines) {
      int equals = line.indexOf('=');
      BigDecimal said = new BigDecimal(line.substring(equals + 1).strip());
      BigDecimal found = new Sum(line.substring(0, equals)).value();
      assertThat(found.setScale(said.scale(), RoundingMode.HALF_UP)).as(line).isEqualTo(said);
    }
  }

  @Test
  void arithmetic_itself_is_read_as_people_write_it() {
    assertThat(new Sum("(530 - 500) / 2 + 40").value()).isEqualByComparingTo("55");
    assertThat(new Sum("2 * 3 - 8 / 4 / 2").value()).isEqualByComparingTo("5");
  }

  /** A sum of numbers, + - * / and brackets, as it stands in the guide. */
  private static final class Sum {
    private final String text;
    private int at;

    Sum(String text) {
      this.text = text.replace(" ", "");
    }

    BigDecimal value() {
      BigDecimal sum = product();
      while (at < text.length() && (next('+') || next('-'))) {
        boolean plus = text.charAt(at++) == '+';
        sum = plus ? sum.add(product()) : sum.subtract(product());
      }
      return sum;
    }

    private BigDecimal product() {
      BigDecimal all = factor();
      while (at < text.length() && (next('*') || next('/'))) {
        boolean times = text.charAt(at++) == '*';
        BigDecimal other = factor();
        all = times ? all.multiply(other) : all.divide(other, MathContext.DECIMAL64);
      }
      return all;
    }

    private BigDecimal factor() {
      if (next('(')) {
        at++;
        BigDecimal inside = value();
        at++;
        return inside;
      }
      int from = at;
      while (at < text.length() && (Character.isDigit(text.charAt(at)) || next('.'))) {
        at++;
      }
      return new BigDecimal(text.substring(from, at));
    }

    private boolean next(char c) {
      return text.charAt(at) == c;
    }
  }
}
