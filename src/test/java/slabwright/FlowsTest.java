package slabwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The files of each flow in {@code docs/flows.md} are there, hang together and are counted. */
class FlowsTest {
  private static final Path SOURCES = Path.of("src/main/java/slabwright");
  private static final Pattern FILE = Pattern.compile("\\d+\\. `([^`]+)`");

  private static Map<String, List<Path>> flows() throws IOException {
    Map<String, List<Path>> flows = new LinkedHashMap<>();
    List<Path> files = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("docs/flows.md"))) {
      Matcher m = FILE.matcher(line);
      if (line.startsWith("## ")) {
        files = new ArrayList<>();
        flows.put(line.substring(3), files);
      } else if (m.matches()) {
        files.add(SOURCES.resolve(m.group(1) + ".java"));
      }
    }
    return flows;
  }

  private static String name(Path file) {
    return file.getFileName().toString().replace(".java", "");
  }

  private static boolean names(Path file, Path other) throws IOException {
    return Pattern.compile("\\b" + name(other) + "\\b").matcher(Files.readString(file)).find();
  }

  @Test
  void each_file_of_a_flow_is_tied_to_one_before_it() throws IOException {
    List<String> loose = new ArrayList<>();
    for (List<Path> files : flows().values()) {
      for (int i = 1; i < files.size(); i++) {
        boolean tied = false;
        for (Path before : files.subList(0, i)) {
          tied |= names(files.get(i), before) || names(before, files.get(i));
        }
        if (!tied) {
          loose.add(files.get(i).toString());
        }
      }
    }
    assertThat(loose).isEmpty();
  }

  @Test
  void the_table_counts_the_files_of_every_flow() throws IOException {
    String page = Files.readString(Path.of("docs/flows.md"));
    assertThat(flows()).hasSize(3);
    flows()
        .forEach(
            (flow, files) ->
                assertThat(page)
                    .containsPattern(
                        "\\| " + Pattern.quote(flow) + " \\| [^|]+ \\| " + files.size() + " \\|"));
  }
}
