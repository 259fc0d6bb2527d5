package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.cli.Spoken.ANY;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.words.Words;

class JobCommandTest {
  private static final String PLAN = "sample-plans/bike-workshop.site.json";

  /** Stands for what is not compared. */
  private static final String END = "§";

  private final StringWriter err = new StringWriter();

  @TempDir static Path shared;
  @TempDir Path folder;

  /** The job of the plan as it is, made once. */
  private Path whole() {
    Path to = shared.resolve("job");
    if (!Files.exists(to)) {
      assertThat(run("job", PLAN, "--out", to.toString())).isZero();
    }
    return to;
  }

  private static ObjectMapper exact() {
    return new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
  }

  private int run(String... args) {
    return SlabwrightCommand.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args);
  }

  private static List<String> files(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile)
          .map(f -> root.relativize(f).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void a_job_gives_sheets_cut_files_and_every_number_and_the_numbers_agree() throws IOException {
    Path to = whole();
    assertThat(files(to))
        .contains("sheets.pdf", "tally.json", "work.json", "quantities.csv")
        .doesNotContain("days.ics")
        .anyMatch(f -> f.startsWith("cut-") && f.endsWith("panel-A.svg"))
        .anyMatch(f -> f.startsWith("cut-") && f.endsWith("panel-A.pdf"))
        .anyMatch(f -> f.endsWith("sign-shop.zip"));
    JsonNode tally = exact().readTree(to.resolve("tally.json").toFile());
    String net = tally.at("/areas/0/net_mm2").decimalValue().toPlainString();
    assertThat(Files.readString(to.resolve("quantities.csv")))
        .contains("workshop,floor,net," + net + ",mm2\r\n");
    JsonNode work = exact().readTree(to.resolve("work.json").toFile());
    assertThat(work.get("cannotStart").findValuesAsText("key"))
        .contains("work.stop.asbestos", "work.start.over-a-quarter");
    assertThat(work.at("/days/steps/0/spans")).isEmpty();
    assertThat(work.at("/areas/0/floor/floor/area_mm2").decimalValue().toPlainString())
        .isEqualTo(net);
    assertThat(work.get("shopBook").asText()).contains("invented");
  }

  /** What is cut says the second at which it was made, in its PDF. */
  @Test
  void without_pictures_every_file_but_the_clients_packet_is_the_same_byte_for_byte()
      throws IOException {
    Path to = folder.resolve("job");
    assertThat(run("job", PLAN, "--no-pictures", "--out", to.toString())).isZero();
    assertThat(files(to)).isEqualTo(files(whole()));
    assertThat(Files.size(to.resolve("1-client.pdf")))
        .isLessThan(Files.size(whole().resolve("1-client.pdf")));
    for (String file : files(to)) {
      boolean stamped = file.startsWith("cut-") && file.matches(".*\\.(pdf|zip)");
      if (!file.equals("1-client.pdf") && !stamped) {
        assertThat(Files.mismatch(to.resolve(file), whole().resolve(file))).as(file).isEqualTo(-1);
      }
    }
  }

  @Test
  void nothing_of_a_job_shows_a_message_that_was_not_put_into_words() throws IOException {
    Path to = whole();
    for (String file : files(to)) {
      if (file.matches(".*\\.(svg|csv|json|txt)")) {
        assertThat(Files.readString(to.resolve(file))).as(file).doesNotContain("Message[");
      }
    }
  }

  /** Two workshops side by side, alike to the ids and names of their inlays. */
  @Test
  void two_areas_whose_inlays_share_id_and_name_give_cut_files_that_tell_them_apart()
      throws IOException {
    ObjectNode root = (ObjectNode) exact().readTree(Path.of(PLAN).toFile());
    ObjectNode other = root.withArray("areas").get(0).deepCopy();
    root.withArray("areas").add(other.put("id", "loft").put("name", "Loft"));
    Path plan = folder.resolve("p.site.json");
    Files.writeString(plan, root.toString());
    Files.copy(Path.of("sample-plans/bike-wheel.svg"), folder.resolve("bike-wheel.svg"));
    Path to = folder.resolve("job");
    assertThat(run("job", plan.toString(), "--out", to.toString())).isZero();
    List<String> names = files(to).stream().filter(f -> f.startsWith("cut-")).toList();
    assertThat(names)
        .contains(
            "cut-workshop_wheel/wheel-workshop_draft_stencil-1_panel-A.svg",
            "cut-loft_wheel/wheel-loft_draft_stencil-1_panel-A.svg");
    assertThat(names.stream().map(f -> f.substring(f.indexOf('/')))).doesNotHaveDuplicates();
  }

  @Test
  void a_refused_plan_writes_nothing() throws IOException {
    Path plan = folder.resolve("p.site.json");
    Files.writeString(plan, Files.readString(Path.of(PLAN)));
    Path to = folder.resolve("job");
    assertThat(run("job", plan.toString(), "--out", to.toString())).isEqualTo(3);
    assertThat(err.toString())
        .containsPattern(
            Spoken.of("store.graphic-files.there-is-no-graphic-in", ANY, "bike-wheel.svg"));
    assertThat(files(folder)).containsExactly("p.site.json");
  }

  @Test
  void a_graphic_that_changed_since_it_was_accepted_is_not_cut() throws IOException {
    Path plan = folder.resolve("p.site.json");
    Files.copy(Path.of("sample-plans/bike-wheel.svg"), folder.resolve("bike-wheel.svg"));
    String accepted = "\"graphic\": \"bike-wheel.svg\", \"accepted\": \"00\"";
    String text =
        Files.readString(Path.of(PLAN))
            .replaceFirst("\"graphic\" ?: ?\"bike-wheel.svg\"", accepted);
    Files.writeString(plan, text);
    Path to = folder.resolve("job");
    assertThat(run("job", plan.toString(), "--out", to.toString())).isEqualTo(3);
    assertThat(err.toString()).containsPattern(Spoken.of("inlay.cut-stop.changed-on-disk", ANY));
    assertThat(files(to)).contains("sheets.pdf").noneMatch(f -> f.startsWith("cut-"));
  }

  @Test
  void a_graphic_that_cannot_be_read_is_refused_and_nothing_is_written() throws IOException {
    Path plan = folder.resolve("p.site.json");
    Files.writeString(plan, Files.readString(Path.of(PLAN)));
    Files.writeString(
        folder.resolve("bike-wheel.svg"), "<svg xmlns='http://www.w3.org/2000/svg'/>");
    assertThat(run("job", plan.toString(), "--out", folder.resolve("job").toString())).isEqualTo(3);
    assertThat(err.toString()).containsPattern(Spoken.of("inlay.artwork.nothing-painted"));
    assertThat(files(folder)).containsExactly("bike-wheel.svg", "p.site.json");
  }

  @Test
  void sheets_are_never_written_over_something_that_is_no_pdf() throws IOException {
    Path file = Files.writeString(folder.resolve("notes.pdf"), "my notes");
    assertThat(run("sheets", PLAN, "--paper", "A3", "--out", file.toString())).isEqualTo(3);
    assertThat(file).hasContent("my notes");
  }

  @Test
  void a_paper_that_is_not_known_is_refused_with_those_that_are() {
    assertThat(run("sheets", PLAN, "--paper", "B7", "--out", folder.resolve("s.pdf").toString()))
        .isEqualTo(3);
    assertThat(err.toString())
        .containsPattern(
            Spoken.of("cli.sheets.no-paper", "B7", "Letter, Tabloid, ARCH C, ARCH D, A4, A3, A1"));
  }

  @Test
  void a_crew_that_reads_spanish_gets_its_pages_beside_the_leads_and_the_index_names_both()
      throws IOException {
    Path to = folder.resolve("job");
    assertThat(run("job", PLAN, "--crew-language", "es-MX", "--out", to.toString())).isZero();
    assertThat(files(to))
        .contains("2-crew.pdf", "2-crew.html", "2-crew-es.pdf", "2-crew-es.html")
        .contains("4-fire-and-safety.pdf", "4-fire-and-safety-es.pdf")
        .doesNotContain("1-client-es.pdf", "5-office-es.pdf");
    String stop = "sheets.crew-day.do-not-start";
    Words spanish = Words.ofTag("es").orElseThrow();
    assertThat(Files.readString(to.resolve("2-crew-es.html")))
        .contains(spanish.say(stop))
        .doesNotContain(Words.english().say(stop));
    assertThat(Files.readString(to.resolve("2-crew.html")))
        .contains(Words.english().say(stop))
        .doesNotContain(spanish.say(stop));
    assertThat(Files.readString(to.resolve("index.html")))
        .contains("href=\"2-crew.pdf\"", "href=\"2-crew-es.pdf\"", "href=\"2-crew-es.html\"")
        .contains("<li lang=\"es-US\"><a href=\"2-crew-es.pdf\">Cuadrilla</a>");
  }

  @Test
  void a_crew_language_that_nobody_has_written_is_refused_and_nothing_is_written()
      throws IOException {
    Path to = folder.resolve("job");
    assertThat(run("job", PLAN, "--crew-language", "pl", "--out", to.toString()))
        .isEqualTo(ExitCode.REFUSED.code());
    assertThat(err.toString())
        .containsPattern(Spoken.of("project.packet-files.no-such-language", "pl"));
    assertThat(files(folder)).isEmpty();
  }

  /** The workshop and, as its second area, the same room with a graphic that can't be used. */
  private Path planWithBrokenGraphic(boolean alone) throws IOException {
    Path plan = folder.resolve("two.site.json");
    ObjectNode site = (ObjectNode) new ObjectMapper().readTree(Path.of(PLAN).toFile());
    ObjectNode second = site.get("areas").get(0).deepCopy();
    second.put("id", "annexe").put("name", "Annexe");
    ((ObjectNode) second.get("inlays").get(0)).put("graphic", "broken.svg");
    ((ArrayNode) site.get("areas")).add(second);
    if (alone) {
      ((ArrayNode) site.get("areas")).remove(0);
    }
    Files.copy(Path.of("sample-plans/bike-wheel.svg"), folder.resolve("bike-wheel.svg"));
    Files.writeString(folder.resolve("broken.svg"), "<svg xmlns='http://www.w3.org/2000/svg'><g");
    return Files.writeString(plan, site.toString());
  }

  private static String upTo(String sentence) {
    return sentence.substring(0, sentence.indexOf(END));
  }

  private static String leftOut() {
    return upTo(Words.english().say("project.usable-areas.left-out", "Annexe", END, END));
  }

  @Test
  void an_area_whose_graphic_is_broken_is_left_out_and_said_and_the_others_are_made()
      throws IOException {
    Path to = folder.resolve("out");
    assertThat(run("job", planWithBrokenGraphic(false).toString(), "--out", to.toString()))
        .isEqualTo(3);
    assertThat(err.toString()).contains(leftOut()).contains("broken.svg");
    assertThat(files(to)).contains("sheets.pdf", "work.json");
    assertThat(Files.readString(to.resolve("takeoff.csv")))
        .contains("Workshop,net floor")
        .doesNotContain("Annexe");
    assertThat(Files.readString(to.resolve("index.html")))
        .contains(Words.english().say("project.usable-areas.note", "Annexe"));
  }

  @Test
  void a_plan_of_which_no_area_is_left_is_refused() throws IOException {
    Path to = folder.resolve("out");
    assertThat(run("job", planWithBrokenGraphic(true).toString(), "--out", to.toString()))
        .isEqualTo(3);
    assertThat(err.toString())
        .startsWith(upTo(Words.english().say("project.usable-areas.none", END)));
    assertThat(to).doesNotExist();
  }
}
