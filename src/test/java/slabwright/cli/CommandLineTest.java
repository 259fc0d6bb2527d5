package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.cli.Spoken.ANY;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.project.export.OutFolder;

class CommandLineTest {
  private static final String WHEEL = "sample-plans/bike-wheel.svg";
  private static final String PLAN = "sample-plans/bike-workshop.site.json";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir Path folder;

  private int run(String... args) {
    return SlabwrightCommand.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  private Path svg(String name, String body) throws IOException {
    return Files.writeString(
        folder.resolve(name),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>" + body + "</svg>");
  }

  private JsonNode json(String line) throws IOException {
    return new ObjectMapper().readTree(line);
  }

  @Test
  void check_of_a_good_plan_ends_with_0() {
    assertThat(run("check", PLAN)).isZero();
    assertThat(out.toString()).containsPattern(Spoken.of("cli.check.nothing-wrong", ANY, 1, 4));
  }

  @Test
  void a_missing_plan_ends_with_3_and_one_sentence() {
    assertThat(run("check", "nowhere.site.json")).isEqualTo(3);
    assertThat(err.toString().strip().lines()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"nonsense", "tally", "inlay", "inlay x.svg --width 5"})
  void wrong_use_ends_with_2(String args) {
    assertThat(run(args.split(" ", -1))).isEqualTo(2);
  }

  @Test
  void tally_gives_json_whose_zones_sum_to_the_net_area() throws IOException {
    assertThat(run("tally", PLAN, "--json")).isZero();
    JsonNode area = json(out.toString()).at("/areas/0");
    double zones = 0;
    for (JsonNode z : area.get("zones")) {
      zones += z.get("area_mm2").asDouble();
    }
    assertThat(zones)
        .isCloseTo(area.get("net_mm2").asDouble(), org.assertj.core.data.Offset.offset(0.1));
    assertThat(area.get("reach_mm2").asDouble() + area.get("hand_mm2").asDouble())
        .isCloseTo(area.get("ground_mm2").asDouble(), org.assertj.core.data.Offset.offset(5.0));
  }

  @Test
  void several_graphics_give_one_json_object_a_line_and_a_bad_one_stops_nothing()
      throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.svg"), "not xml");
    Path good = svg("good.svg", "<rect width='100' height='50'/>");
    assertThat(
            run(
                "inlay",
                bad.toString(),
                good.toString(),
                "--width",
                "1 m",
                "--roll",
                "610 mm",
                "--json"))
        .isEqualTo(3);
    List<String> lines = out.toString().lines().toList();
    assertThat(lines).hasSize(2);
    assertThat(json(lines.get(0)).has("refused")).isTrue();
    assertThat(json(lines.get(1)).get("opening_mm2").asDouble()).isEqualTo(500_000);
  }

  @Test
  void a_graphic_is_told_in_the_units_that_its_width_is_typed_in() {
    assertThat(run("inlay", WHEEL, "--width", "4'", "--roll", "610 mm")).isZero();
    assertThat(out.toString()).contains("sq ft", "″").doesNotContainPattern("\\d mm|\\d m\\b|m²");
    out.getBuffer().setLength(0);
    assertThat(run("inlay", WHEEL, "--width", "1.2 m", "--roll", "24 in")).isZero();
    assertThat(out.toString()).contains("m²", " mm").doesNotContain("″", "sq ft");
  }

  @Test
  void blank_is_mask_and_openings() throws IOException {
    assertThat(run("inlay", WHEEL, "--width", "1 m", "--roll", "24 in", "--json")).isZero();
    JsonNode o = json(out.toString());
    assertThat(o.get("opening_mm2").asDouble() + o.get("mask_mm2").asDouble())
        .isCloseTo(o.get("blank_mm2").asDouble(), org.assertj.core.data.Offset.offset(0.01));
    assertThat(o.get("width_mm").asDouble())
        .isCloseTo(1000, org.assertj.core.data.Offset.offset(0.05));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0 mm", "10 km", "-3 m"})
  void an_absurd_width_is_refused(String width) {
    assertThat(run("inlay", WHEEL, "--width=" + width, "--roll", "610 mm")).isEqualTo(3);
    assertThat(err.toString())
        .containsPattern(Spoken.of("site.inlay-spec-rules.the-inlays-width-is-it", width));
  }

  @Test
  void a_roll_narrower_than_the_overlap_is_refused() {
    assertThat(run("inlay", WHEEL, "--width", "1 m", "--roll", "60 mm", "--overlap", "50 mm"))
        .isEqualTo(3);
    assertThat(err.toString())
        .containsPattern(
            Spoken.of("site.inlay-spec-rules.the-rolls-usable-width-is", "36 mm", "50 mm"));
  }

  @Test
  void one_colour_alone_can_be_dyed() throws IOException {
    Path two =
        svg(
            "two.svg",
            "<rect width='100' height='50' fill='#ff0000'/><rect y='50' width='50' height='50' fill='#0000ff'/>");
    assertThat(
            run(
                "inlay",
                two.toString(),
                "--width",
                "1 m",
                "--roll",
                "24 in",
                "--colours",
                "#0000ff",
                "--json"))
        .isZero();
    assertThat(json(out.toString()).get("opening_mm2").asDouble()).isEqualTo(250_000);
  }

  @Test
  void a_colour_that_is_not_there_is_refused_with_those_that_are() throws IOException {
    Path red = svg("red.svg", "<rect width='100' height='50' fill='#ff0000'/>");
    assertThat(
            run(
                "inlay",
                red.toString(),
                "--width",
                "1 m",
                "--roll",
                "24 in",
                "--colours",
                "#00ff00"))
        .isEqualTo(3);
    assertThat(err.toString()).contains("#ff0000");
  }

  @Test
  void cut_files_are_written_again_over_our_own_but_never_over_others() throws IOException {
    Path to = folder.resolve("cut");
    String[] args = {"inlay", WHEEL, "--width", "1.5 m", "--roll", "24 in", "--out", to.toString()};
    assertThat(run(args)).isZero();
    try (Stream<Path> files = Files.list(to)) {
      assertThat(files.filter(f -> f.toString().endsWith(".svg")).count())
          .isGreaterThanOrEqualTo(3);
    }
    assertThat(run(args)).isZero();
    Files.delete(to.resolve(OutFolder.MANIFEST));
    assertThat(run(args)).isEqualTo(3);
    assertThat(err.toString())
        .containsPattern(Spoken.of("project.out-folder.foreign", to.toString(), ANY));
  }

  @Test
  void letters_in_a_substitute_font_give_no_cut_file_until_accepted() throws IOException {
    Path text = svg("text.svg", "<text y='50' font-family='No Such Face' font-size='40'>Go</text>");
    Path to = folder.resolve("cut");
    String[] args = {
      "inlay", text.toString(), "--width", "1 m", "--roll", "24 in", "--out", to.toString()
    };
    assertThat(run(args)).isEqualTo(3);
    assertThat(err.toString()).contains("--accept-font");
    try (Stream<Path> files = Files.list(to)) {
      assertThat(files.filter(f -> f.toString().endsWith(".svg"))).isEmpty();
    }
    assertThat(
            run(Stream.concat(Stream.of(args), Stream.of("--accept-font")).toArray(String[]::new)))
        .isZero();
  }

  @Test
  void a_fault_in_one_graphic_does_not_end_the_run_of_several() throws IOException {
    Path dashed =
        svg("a.svg", "<path d='M9 9H80' stroke='red' stroke-width='9' stroke-dasharray='5 -3'/>");
    Path empty = svg("b.svg", "");
    Path good = svg("c.svg", "<rect width='50' height='50'/>");
    assertThat(
            run(
                "inlay",
                dashed.toString(),
                empty.toString(),
                good.toString(),
                "--width",
                "1 m",
                "--roll",
                "24 in",
                "--json"))
        .isEqualTo(3);
    assertThat(out.toString().strip().lines()).hasSize(3);
    assertThat(out.toString()).contains("c.svg");
  }

  @Test
  void whatever_is_wrong_with_one_graphic_the_others_are_made() throws IOException {
    Path good = svg("good.svg", "<rect width='100' height='50'/>");
    Path last = svg("last.svg", "<rect width='50' height='50'/>");
    List<Path> broken = new ArrayList<>();
    broken.add(svg("dashes.svg", "<path d='M9 9H80' stroke='red' stroke-dasharray='5 -3'/>"));
    broken.add(
        Files.writeString(
            folder.resolve("cut.svg"), "<svg xmlns='http://www.w3.org/2000/svg'><g>"));
    broken.add(Files.writeString(folder.resolve("torn.pdf"), "%PDF-1.7\n1 0 obj <<"));
    broken.add(Files.writeString(folder.resolve("torn.png"), "\u0089PNG\r\n\u001a\n"));
    broken.add(Files.write(folder.resolve("empty.svg"), new byte[0]));
    broken.add(Files.createDirectory(folder.resolve("folder.svg")));
    broken.add(folder.resolve("gone.svg"));
    broken.add(
        svg(
            "bomb.svg",
            "<defs><g id='a0'><rect width='1' height='1'/></g>"
                + copies(1)
                + copies(2)
                + copies(3)
                + copies(4)
                + copies(5)
                + copies(6)
                + "</defs><use href='#a6'/>"));
    List<String> args = new ArrayList<>(List.of("inlay", good.toString()));
    broken.forEach(f -> args.add(f.toString()));
    Path breaksOff = Path.of("/proc/self/mem");
    if (Files.isRegularFile(breaksOff)) {
      args.add(breaksOff.toString());
    }
    args.addAll(List.of(last.toString(), "--width", "1 m", "--roll", "610 mm", "--out"));
    Path to = folder.resolve("out");
    args.add(to.toString());
    assertThat(run(args.toArray(String[]::new))).isEqualTo(3);
    assertThat(to.resolve("good")).isDirectoryContaining("glob:**.svg");
    assertThat(to.resolve("last")).isDirectoryContaining("glob:**.svg");
    for (Path f : broken.subList(1, broken.size())) {
      assertThat(err.toString()).contains(f.getFileName().toString());
    }
    assertThat(err.toString()).doesNotContain("Exception");
  }

  private static String copies(int n) {
    return "<g id='a%d'>".formatted(n) + "<use href='#a%d'/>".formatted(n - 1).repeat(10) + "</g>";
  }

  @Test
  void a_refused_graphic_is_graver_than_one_with_a_question() throws IOException {
    Path white =
        svg(
            "white.svg",
            "<rect width='100' height='50' fill='white'/><rect y='60' width='9' height='9'/>");
    String[] asks = {"inlay", white.toString(), "--width", "1 m", "--roll", "610 mm"};
    assertThat(run(asks)).isEqualTo(4);
    Path gone = folder.resolve("gone.svg");
    assertThat(
            run("inlay", gone.toString(), white.toString(), "--width", "1 m", "--roll", "610 mm"))
        .isEqualTo(3);
  }

  @Test
  void two_named_colours_are_merged_and_all_others_stay_apart() throws IOException {
    Path near =
        Files.writeString(
            folder.resolve("near.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 30'>"
                + "<rect width='20' height='30' fill='#1b4965'/>"
                + "<rect x='30' width='20' height='30' fill='#1c4a66'/>"
                + "<rect x='60' width='20' height='30' fill='#ca6702'/></svg>");
    String[] plain = {"inlay", near.toString(), "--width", "1 m", "--roll", "48 in"};
    assertThat(run(plain)).isEqualTo(4);
    assertThat(out.toString()).contains("--merge #1c4a66=#1b4965");
    out.getBuffer().setLength(0);
    String[] merged = Arrays.copyOf(plain, plain.length + 3);
    merged[plain.length] = "--merge";
    merged[plain.length + 1] = "#1C4A66=#1b4965";
    merged[plain.length + 2] = "--json";
    assertThat(run(merged)).isZero();
    assertThat(json(out.toString()).get("colours")).hasSize(2);
    merged[plain.length + 1] = "#1c4a66=#1b4965,#1b4965=#ca6702";
    assertThat(run(merged)).isEqualTo(3);
    merged[plain.length + 1] = "blue";
    assertThat(run(merged)).isEqualTo(3);
  }

  @Test
  void an_open_question_ends_with_4_and_no_cut_file_until_it_is_answered() throws IOException {
    Path logo =
        svg("logo.svg", "<path d='M0 0h60v60h-60z'/><path fill='#fff' d='M9 9h20v20h-20z'/>");
    String[] ask = {"inlay", logo.toString(), "--width", "600 mm", "--roll", "48 in", "--json"};
    assertThat(run(ask)).isEqualTo(4);
    JsonNode asked = json(out.toString()).get("questions").get(0);
    assertThat(asked.get("kind").asText()).isEqualTo("white");
    assertThat(asked.get("offer").asText()).isEqualTo("leave-bare");
    assertThat(asked.get("colours").get(0).asText()).isEqualTo("#ffffff");
    assertThat(run(with(ask, "--out", folder.resolve("a").toString()))).isEqualTo(4);
    try (Stream<Path> files = Files.walk(folder.resolve("a"))) {
      assertThat(files).noneMatch(f -> f.toString().endsWith(".svg"));
    }
    assertThat(run(with(ask, "--leave-bare", "#FFFFFF"))).isZero();
    assertThat(run(with(ask, "--as-drawn"))).isZero();
    assertThat(run(with(ask, "--leave-bare", "white"))).isEqualTo(3);
  }

  private static String[] with(String[] args, String... more) {
    return Stream.of(args, more).flatMap(Stream::of).toArray(String[]::new);
  }

  @Test
  void a_picture_says_its_doubt_and_asks_for_its_paper_when_it_cannot_be_told() throws IOException {
    BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 60 * 40; i++) {
      image.setRGB(i % 60, i / 60, i % 60 < 30 ? 0xb02030 : 0x204090);
    }
    Path flag = folder.resolve("flag.png");
    ImageIO.write(image, "png", flag.toFile());
    String[] ask = {"inlay", flag.toString(), "--width", "600 mm", "--roll", "48 in", "--json"};
    assertThat(run(ask)).isEqualTo(4);
    assertThat(out.toString()).contains("\"doubt_mm\":", "\"mmPerPx\":10", "\"kind\":\"paper\"");
    String[] answer = {
      "inlay", flag.toString(), "--width=300 mm", "--roll=48 in", "--json", "--paper=#204090"
    };
    assertThat(run(answer)).isZero();
  }
}
