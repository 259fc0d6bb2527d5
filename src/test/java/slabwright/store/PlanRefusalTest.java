package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Site;
import slabwright.units.Result;

/** Each way a plan can be wrong is refused with its key, what and where. */
class PlanRefusalTest {
  private static final String SQUARE =
      "\"id\":\"a\",\"name\":\"A\",\"outline\":[{\"at\":[0,0]},{\"at\":[9000,0]},{\"at\":[9000,9000]},{\"at\":[0,9000]}]";

  @TempDir Path folder;

  private static String plan(String area) {
    return "{\"version\":1,\"name\":\"S\",\"areas\":[{" + area + "}]}";
  }

  private static List<String> faults(String text) {
    return FaultKeys.of(PlanFile.parse(text));
  }

  @Test
  void a_good_square_is_read() {
    assertThat(faults(plan(SQUARE))).isEmpty();
  }

  @Test
  void a_plan_from_before_use_was_asked_opens_as_not_asked() {
    FloorArea area = PlanFile.parse(plan(SQUARE)).orThrow().areas().get(0);
    assertThat(area.use()).isEqualTo(FloorUse.NOT_ASKED);
    assertThat(area.declined()).isEmpty();
  }

  @Test
  void corners_that_make_no_sign_are_refused() {
    String inlay =
        SQUARE
            + ",\"inlays\":[{\"id\":\"i\",\"graphic\":\"a.jpg\",\"middle\":[4000,4000],\"width\":1000,"
            + "\"stencil\":{\"roll\":610},\"picture\":{\"file\":\"a.jpg\",\"colours\":2,\"square\":%s}}]";
    assertThat(faults(plan(inlay.formatted("[[0,0],[90,0],[90,90],[0,90]]")))).isEmpty();
    for (String odd : List.of("[[0,0],[90,0],[90,90]]", "[[0,0],[90,90],[90,0],[0,90]]")) {
      assertThat(faults(plan(inlay.formatted(odd))))
          .singleElement()
          .asString()
          .contains("store.inlay-codec.no-square");
    }
  }

  @Test
  void an_answer_that_is_neither_yes_nor_no_is_refused() {
    assertThat(faults(plan(SQUARE + ",\"use\":{\"wet\":\"perhaps\"}")))
        .singleElement()
        .asString()
        .contains("use.wet")
        .contains("store.field-reader.true-or-false");
  }

  @Test
  void advice_that_is_not_known_is_refused_with_the_ids_that_are() {
    assertThat(faults(plan(SQUARE + ",\"declined\":[{\"advice\":\"wax\",\"by\":\"K. R.\"}]")))
        .singleElement()
        .asString()
        .contains("wax moisture-test,");
  }

  @Test
  void a_day_that_is_none_is_refused() {
    assertThat(faults(plan(SQUARE + ",\"declined\":[{\"advice\":\"grit\",\"on\":\"May\"}]")))
        .singleElement()
        .asString()
        .contains("store.floor-use-codec.was-declined-on-write-a", "May");
  }

  @Test
  void advice_declined_twice_is_refused() {
    String twice = ",\"declined\":[{\"advice\":\"grit\"},{\"advice\":\"grit\",\"by\":\"K. R.\"}]";
    assertThat(faults(plan(SQUARE + twice)))
        .singleElement()
        .asString()
        .contains("site.detail-rules.advice-is-declined-twice-for");
  }

  @Test
  void a_missing_file_is_named() {
    assertThat(FaultKeys.of(PlanFile.read(folder.resolve("no.site.json"))))
        .singleElement()
        .asString()
        .startsWith("store.plan-file.there-is-no-plan-file")
        .contains("no.site.json");
  }

  @Test
  void what_is_not_json_is_refused_with_its_line() {
    assertThat(faults("{\n\"version\": 1,\n oops }"))
        .singleElement()
        .asString()
        .startsWith("store.json-reader.not-json-at 3 ");
  }

  @Test
  void a_newer_version_is_refused() {
    assertThat(faults("{\"version\":3}"))
        .containsExactly("store.plan-upgrader.the-plan-is-of-version 3 2");
  }

  @Test
  void an_unknown_field_is_named_with_its_line() {
    assertThat(faults("{\"version\":1,\"name\":\"S\",\n\"colour\":3}"))
        .singleElement()
        .asString()
        .isEqualTo(
            "store.field-reader.field-at-is-not-known colour store.json-value.line colour 2");
  }

  @Test
  void every_fault_is_found_at_once() {
    assertThat(faults("{\"version\":1,\"areas\":[{\"id\":5,\"setting\":\"attic\"}]}"))
        .hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void an_outline_that_crosses_itself_is_refused_with_the_place() {
    String bow =
        "\"id\":\"a\",\"name\":\"A\",\"outline\":[{\"at\":[0,0]},{\"at\":[1000,1000]},{\"at\":[1000,0]},{\"at\":[0,1000]}]";
    assertThat(faults(plan(bow)))
        .anyMatch(
            s ->
                s.equals(
                    "site.outline-rules.the-outline-of-crosses-or A site.outline-rules.place 500 500"));
  }

  @Test
  void a_mark_wholly_outside_is_refused() {
    String mark =
        ",\"marks\":[{\"id\":\"m\",\"name\":\"far\",\"kind\":\"patch\",\"form\":{\"shape\":\"circle\",\"middle\":[20000,0],\"radius\":500}}]";
    assertThat(faults(plan(SQUARE + mark)))
        .singleElement()
        .asString()
        .contains("site.mark-rules.mark-lies-wholly-outside-the site.mark-rules.named far");
  }

  @Test
  void a_mark_partly_outside_is_accepted() {
    String mark =
        ",\"marks\":[{\"id\":\"m\",\"name\":\"\",\"kind\":\"patch\",\"form\":{\"shape\":\"circle\",\"middle\":[9000,0],\"radius\":500}}]";
    assertThat(faults(plan(SQUARE + mark))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {"0", "-5", "1e13", "\"10 km\"", "\"0 mm\"", "\"twelve\"", "null"})
  void a_radius_that_makes_no_sense_is_refused(String radius) {
    String mark =
        ",\"marks\":[{\"id\":\"m\",\"kind\":\"patch\",\"form\":{\"shape\":\"circle\",\"middle\":[100,100],\"radius\":"
            + radius
            + "}}]";
    assertThat(faults(plan(SQUARE + mark))).isNotEmpty();
  }

  @Test
  void a_roll_narrower_than_the_overlap_is_refused() throws IOException {
    assertThat(FaultKeys.of(withInlay("emblem.svg", "\"60 mm\"", "\"40 mm\"")))
        .anyMatch(s -> s.contains("site.inlay-spec-rules.the-rolls-usable-width-is"));
  }

  @Test
  void a_missing_graphic_is_refused() throws IOException {
    assertThat(FaultKeys.of(withInlay("other.svg", "600", "12")))
        .singleElement()
        .asString()
        .contains("store.graphic-files.there-is-no-graphic-in", "other.svg");
  }

  @Test
  void a_graphic_outside_the_folder_is_refused() throws IOException {
    assertThat(FaultKeys.of(withInlay("../emblem.svg", "600", "12")))
        .anyMatch(s -> s.contains("site.inlay-spec-rules.the-graphic-lies-outside-the"));
  }

  @Test
  void a_link_that_leads_outside_the_folder_is_refused() throws IOException {
    Path inside = Files.createDirectory(folder.resolve("plans"));
    Files.writeString(folder.resolve("secret.svg"), "<svg/>");
    Files.createSymbolicLink(inside.resolve("link.svg"), folder.resolve("secret.svg"));
    Path plan = Files.writeString(inside.resolve("p.site.json"), planWith("link.svg", "600", "12"));
    assertThat(FaultKeys.of(PlanFile.read(plan)))
        .singleElement()
        .asString()
        .contains("store.graphic-files.the-graphic-lies-outside-the");
  }

  private Result<Site> withInlay(String graphic, String roll, String overlap) throws IOException {
    Files.writeString(folder.resolve("emblem.svg"), "<svg/>");
    return PlanFile.read(
        Files.writeString(folder.resolve("p.site.json"), planWith(graphic, roll, overlap)));
  }

  private static String planWith(String graphic, String roll, String overlap) {
    return plan(
        SQUARE
            + ",\"inlays\":[{\"id\":\"i\",\"graphic\":\""
            + graphic
            + "\",\"middle\":[4000,4000],\"width\":1000,\"stencil\":{\"roll\":"
            + roll
            + ",\"overlap\":"
            + overlap
            + "}}]");
  }

  private static void fillUp(FileChannel out, ByteBuffer bytes) throws IOException {
    bytes.limit(bytes.limit() / 2);
    while (bytes.hasRemaining()) {
      out.write(bytes);
    }
    throw new IOException("the disk is full");
  }

  @Test
  void a_failed_save_leaves_the_old_file() throws IOException {
    Path file = folder.resolve("p.site.json");
    PlanFile.save(FullSite.make(), file);
    byte[] old = Files.readAllBytes(file);
    Site other = FullSite.make().withName("Other");
    byte[] bytes = PlanFile.write(other).getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(() -> AtomicFile.write(file, bytes, PlanRefusalTest::fillUp))
        .hasMessage("the disk is full");
    assertThat(file).hasBinaryContent(old);
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
    PlanFile.save(other, file);
    assertThat(file).hasBinaryContent(bytes);
  }

  @Test
  void a_journal_gives_back_the_last_state_until_it_is_cleared() throws IOException {
    Journal journal = Journal.beside(folder.resolve("p.site.json"));
    assertThat(journal.recover()).isEmpty();
    journal.write(FullSite.make());
    assertThat(journal.recover()).contains(FullSite.make());
    journal.clear();
    assertThat(journal.recover()).isEmpty();
  }
}
