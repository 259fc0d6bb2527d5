package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.cli.Spoken.ANY;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.inlay.InlayPlan;
import slabwright.project.AreaCache;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Site;

/** The proof check from the command line: what it prints and how it ends. */
class ProofCommandTest {
  private static final Path PLAN = Path.of("sample-plans/bike-workshop.site.json");

  private static final String START = "\\A";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir Path folder;

  private int run(Path file, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("proof", PLAN.toString(), "--inlay", "wheel", "--file", file.toString()));
    args.addAll(List.of(more));
    return SlabwrightCommand.run(
        new PrintWriter(out), new PrintWriter(err), args.toArray(String[]::new));
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out.toString());
  }

  private static InlayPlan wheel;

  @BeforeAll
  static void the_wheel_is_planned_once_for_all() throws Exception {
    Site site = PlanLoader.read(PLAN);
    wheel =
        new AreaCache()
            .of(site, PLAN.toAbsolutePath().getParent(), () -> false).stream()
                .flatMap(a -> a.inlays().stream())
                .findFirst()
                .orElseThrow()
                .plan();
  }

  /** The wheel's first stencil as an SVG, its openings moved in their blank. */
  private Path returned(Affine moved) throws Exception {
    Bounds b = wheel.stencils().blank();
    Region open = wheel.stencils().stencils().get(0).openings().map(moved);
    StringBuilder d = new StringBuilder();
    for (Ring ring : open.rings()) {
      String command = "M";
      for (Vec p : ring.points()) {
        d.append(String.format(Locale.ROOT, "%s%.4f %.4f", command, p.x(), p.y()));
        command = "L";
      }
      d.append('Z');
    }
    return Files.writeString(
        folder.resolve("returned.svg"),
        String.format(
            Locale.ROOT,
            "<svg xmlns='http://www.w3.org/2000/svg' width='%1$.3fmm' height='%2$.3fmm'"
                + " viewBox='0 0 %1$.3f %2$.3f'><rect width='%1$.3f' height='%2$.3f' fill='none'"
                + " stroke='#000'/><path fill='#777' fill-rule='evenodd' d='%3$s'/></svg>",
            b.maxX(),
            b.maxY(),
            d));
  }

  @Test
  void a_right_drawing_ends_with_0_and_says_cut_first() throws Exception {
    Path right = returned(Affine.IDENTITY);
    assertThat(run(right, "--shading", "pulled_out")).isZero();
    assertThat(out.toString()).containsPattern(START + Spoken.of("inlay.proof-verdict.cut"));
    assertThat(out.toString())
        .containsPattern(Spoken.of("inlay.proof-limits.all", "1", ANY, ANY, ANY, ANY));
  }

  @Test
  void the_json_has_verdict_stencil_panels_and_faults() throws Exception {
    assertThat(run(returned(Affine.IDENTITY), "--shading", "pulled_out", "--json")).isZero();
    JsonNode o = json();
    assertThat(o.get("verdict").asText()).isEqualTo("cut");
    assertThat(o.get("stencil").asInt()).isEqualTo(1);
    assertThat(o.get("panels")).isNotEmpty();
    assertThat(o.get("faults")).isEmpty();
    assertThat(o.at("/limits/edge_mm").asDouble()).isEqualTo(1);
  }

  @Test
  void a_wrong_drawing_ends_with_5_and_says_kind_place_and_size() throws Exception {
    Path shifted = returned(Affine.move(6, 0));
    assertThat(run(shifted, "--shading", "pulled_out", "--json")).isEqualTo(5);
    JsonNode fault = json().at("/faults/0");
    assertThat(json().get("verdict").asText()).isEqualTo("do-not-cut");
    assertThat(fault.get("kind").asText()).isEqualTo("shifted-in-blank");
    assertThat(fault.get("size_mm").asDouble()).isBetween(5.9, 6.1);
    assertThat(fault.get("words").asText())
        .containsPattern(Spoken.of("inlay.proof-fault.shifted-right-down", "6 mm", ANY));
    assertThat(fault.get("x_mm").isNull()).isTrue();
  }

  @Test
  void shading_without_a_meaning_ends_with_6_and_never_with_a_tick() throws Exception {
    assertThat(run(returned(Affine.IDENTITY))).isEqualTo(6);
    assertThat(out.toString())
        .containsPattern(START + Spoken.of("inlay.proof-verdict.cannot-tell"))
        .doesNotContain("✓")
        .contains("!");
  }

  @Test
  void a_limit_can_be_set() throws Exception {
    Path shifted = returned(Affine.move(3, 0));
    assertThat(run(shifted, "--shading", "pulled_out")).isEqualTo(5);
    assertThat(run(shifted, "--shading", "pulled_out", "--move-limit", "4 mm")).isZero();
    assertThat(run(shifted, "--shading", "pulled_out", "--edge-limit", "0 mm")).isEqualTo(3);
  }

  @Test
  void a_file_that_cannot_be_read_is_named_and_keeps_the_others_from_being_cut() throws Exception {
    Path right = returned(Affine.IDENTITY);
    List<Path> broken =
        List.of(
            Files.writeString(folder.resolve("torn.pdf"), "%PDF-1.7\n1 0 obj <<"),
            Files.writeString(
                folder.resolve("torn.svg"), "<svg xmlns='http://www.w3.org/2000/svg'><g>"),
            folder.resolve("gone.svg"));
    String[] more = new String[broken.size() + 2];
    for (int i = 0; i < broken.size(); i++) {
      more[i] = broken.get(i).toString();
    }
    more[broken.size()] = "--shading";
    more[broken.size() + 1] = "pulled_out";
    assertThat(run(right, more)).isEqualTo(6);
    broken.forEach(f -> assertThat(out.toString()).contains(f.getFileName().toString()));
  }

  @Test
  void a_missing_file_or_an_unknown_stencil_ends_with_3() throws Exception {
    assertThat(run(folder.resolve("none.svg"))).isEqualTo(3);
    assertThat(run(returned(Affine.IDENTITY), "--stencil", "9")).isEqualTo(3);
  }
}
