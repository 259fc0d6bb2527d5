package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is written on the command line or stands in the files it names: it ends with a code of
 * the table, says why in words, and never with a fault of the program's own or a stack trace.
 */
class OddCommandLinesTest {
  private static final Path SAMPLES = Path.of("sample-plans");
  private static final String STACK =
      "(?s).*(\\n\\tat |\\w+Exception|\\w+Error\\b|\\bjava\\.|slabwright\\.[a-z]).*";

  @TempDir Path folder;

  private final List<String> wrong = new ArrayList<>();

  /** Files that no command can use, and places where there is none. */
  private List<String> oddFiles() throws IOException {
    byte[] noise = new byte[3000];
    new Random(7).nextBytes(noise);
    Files.createDirectories(folder.resolve("a-folder"));
    Files.write(folder.resolve("noise.bin"), noise);
    Files.write(folder.resolve("empty.txt"), new byte[0]);
    Files.write(
        folder.resolve("latin.txt"), "W\u00e4nde 3 m".getBytes(StandardCharsets.ISO_8859_1));
    Files.writeString(folder.resolve("null.json"), "null");
    Files.writeString(folder.resolve("deep.json"), "[".repeat(100_000));
    Files.writeString(folder.resolve("a plan, \u201cnamed\u201d.site.json"), "{}");
    Files.createSymbolicLink(folder.resolve("nowhere-link"), folder.resolve("gone"));
    return List.of(
        at("a-folder"),
        at("noise.bin"),
        at("empty.txt"),
        at("latin.txt"),
        at("null.json"),
        at("deep.json"),
        at("a plan, \u201cnamed\u201d.site.json"),
        at("nowhere-link"),
        at("gone.json"),
        at("no/such/folder/x.json"),
        "",
        "/dev/null",
        "a\u0000b");
  }

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  @BeforeEach
  void a_plan_with_its_graphic() throws IOException {
    for (String name : List.of("bike-workshop.site.json", "bike-wheel.svg", "back-office.tape")) {
      Files.copy(SAMPLES.resolve(name), folder.resolve(name));
    }
  }

  /** Runs a command and judges how it ended. */
  private int run(Set<Integer> codes, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = SlabwrightCommand.run(new PrintWriter(out), new PrintWriter(err), args);
    String said = err.toString();
    boolean silent = code != 0 && said.isBlank() && out.toString().isBlank();
    if (!codes.contains(code) || said.matches(STACK) || silent) {
      String first = said.lines().findFirst().orElse("");
      wrong.add((Arrays.toString(args) + " ended with " + code + ": " + first).replace('\0', '?'));
    }
    return code;
  }

  private void refused(String... args) {
    run(Set.of(2, 3), args);
  }

  @Test
  void a_file_that_can_not_be_used_is_said_by_every_command() throws IOException {
    String plan = at("bike-workshop.site.json");
    for (String file : oddFiles()) {
      refused("check", file);
      refused("tally", file, "--json");
      refused("job", file, "--out", at("out"));
      refused("sheets", file, "--out", at("x.pdf"));
      refused("picture", file, "--out", at("x.png"));
      refused("release", file);
      refused("changes", file);
      refused("actuals", file, "--used", "sealer=1 gal");
      refused("tape", file);
      refused("inlay", file, "--width", "1 m", "--roll", "610 mm", "--json");
      refused("proof", file, "--file", at("bike-wheel.svg"));
      refused("proof", plan, "--inlay", "wheel", "--file", file);
      refused("job", plan, "--out", at("out"), "--forecast", file);
    }
    assertThat(wrong).isEmpty();
    assertThat(folder.resolve("out")).doesNotExist();
    assertThat(folder.resolve("x.pdf")).doesNotExist();
  }

  @Test
  void a_value_that_makes_no_sense_is_said_by_every_option() {
    saysNoTo(List.of("", "-1", "9".repeat(400)));
  }

  @Test
  @Tag("long")
  void more_values_that_make_no_sense_are_said_by_every_option() {
    saysNoTo(List.of(" ", "0", "NaN", "1e999 m", "\u0000", "%s"));
  }

  private void saysNoTo(List<String> values) {
    String plan = at("bike-workshop.site.json");
    String wheel = at("bike-wheel.svg");
    for (String odd : values) {
      refused("inlay", wheel, "--width=" + odd, "--roll", "610 mm");
      refused("inlay", wheel, "--width", "1 m", "--roll=" + odd);
      refused("inlay", wheel, "--width", "1 m", "--roll", "610 mm", "--colours=" + odd);
      refused("inlay", wheel, "--width", "1 m", "--roll", "610 mm", "--square=" + odd);
      refused("proof", plan, "--file", wheel, "--page=" + odd);
      refused("proof", plan, "--file", wheel, "--stencil=" + odd);
      refused("proof", plan, "--file", wheel, "--inlay=" + odd);
      refused("proof", plan, "--file", wheel, "--edge-limit=" + odd);
      refused("proof", plan, "--file", wheel, "--piece-area=" + odd);
      refused("picture", plan, "--pixels=" + odd);
      refused("picture", plan, "--area=" + odd, "--out", at("x.png"), "--pixels", "120");
      refused("tape", at("back-office.tape"), "--units=" + odd);
      refused("sheets", plan, "--out", at("x.pdf"), "--paper=" + odd);
      refused("changes", plan, "--since=" + odd);
      refused("actuals", plan, "--used=" + odd);
      refused("actuals", plan, "--machine=" + odd + "=" + odd);
      refused(odd);
      refused("check", plan, odd);
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void a_place_that_can_not_be_written_to_is_said() throws IOException {
    writesNothingTo(List.of(at("a-file/x"), "/dev/null/x", ""));
  }

  @Test
  @Tag("long")
  void more_places_that_can_not_be_written_to_are_said() throws IOException {
    writesNothingTo(List.of("/proc/none/x", at("bike-workshop.site.json"), "a\u0000b"));
  }

  private void writesNothingTo(List<String> places) throws IOException {
    Files.writeString(folder.resolve("a-file"), "somebody's");
    String plan = at("bike-workshop.site.json");
    for (String to : places) {
      refused("tape", at("back-office.tape"), "--out", to);
      refused("sheets", plan, "--out", to);
      refused("picture", plan, "--pixels", "120", "--out", to);
      refused("inlay", at("bike-wheel.svg"), "--width", "1 m", "--roll", "610 mm", "--out", to);
    }
    assertThat(wrong).isEmpty();
    assertThat(Files.readString(folder.resolve("a-file"))).isEqualTo("somebody's");
  }

  @Test
  void a_shop_book_that_is_none_is_said() throws IOException {
    String plan = at("bike-workshop.site.json");
    for (String odd : List.of("noise.bin", "latin.txt", "empty.txt")) {
      oddFilesOnce();
      Files.deleteIfExists(folder.resolve("shop.book"));
      Files.copy(folder.resolve(odd), folder.resolve("shop.book"));
      refused("job", plan, "--out", at("out"));
      refused("actuals", plan, "--used", "sealer=1 gal");
    }
    assertThat(wrong).isEmpty();
    assertThat(folder.resolve("out")).doesNotExist();
  }

  private void oddFilesOnce() throws IOException {
    if (!Files.exists(folder.resolve("noise.bin"))) {
      oddFiles();
    }
  }
}
