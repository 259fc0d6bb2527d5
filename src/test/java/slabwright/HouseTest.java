package slabwright;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.floor.FloorTakeoff;
import slabwright.shape.Region;
import slabwright.site.FloorArea;

/** The walls of the house. Each rule first proves that the packages it names exist. */
class HouseTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("slabwright");

  /** Which rooms each room may use, beside itself. */
  private static final Map<String, List<String>> MAY_USE =
      Map.ofEntries(
          Map.entry("units", List.of()),
          Map.entry("words", List.of("units")),
          Map.entry("shape", List.of("units")),
          Map.entry("site", List.of("units", "shape")),
          Map.entry("tape", List.of("units", "shape", "site")),
          Map.entry("floor", List.of("units", "shape", "site")),
          Map.entry("inlay", List.of("units", "shape", "site", "floor", "drawing", "pdfin")),
          Map.entry("work", List.of("units", "shape", "site", "floor", "inlay")),
          Map.entry("drawing", List.of("units", "shape")),
          Map.entry("pdfin", List.of("units", "shape")),
          Map.entry(
              "figures",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin")),
          Map.entry(
              "sheets",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin", "figures")),
          Map.entry(
              "project",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin", "figures", "sheets", "store")),
          Map.entry("store", List.of("units", "shape", "site")),
          Map.entry(
              "cli",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin", "figures", "sheets", "store", "project")),
          Map.entry(
              "desk",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin", "figures", "sheets", "store", "project")));

  static Stream<String> rooms() {
    return MAY_USE.keySet().stream().sorted();
  }

  private static String room(String name) {
    return "slabwright." + name + "..";
  }

  private static void check(ArchRule rule, String... packages) {
    for (String p : packages) {
      assertThat(CLASSES.stream().anyMatch(resideInAPackage(p)))
          .as("package %s exists", p)
          .isTrue();
    }
    rule.check(CLASSES);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void a_room_uses_only_the_rooms_below_it(String name) {
    String[] others =
        MAY_USE.keySet().stream()
            .filter(r -> !r.equals(name) && !MAY_USE.get(name).contains(r))
            .map(HouseTest::room)
            .toArray(String[]::new);
    check(
        noClasses()
            .that()
            .resideInAPackage(room(name))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(others),
        room(name));
  }

  @Test
  void javafx_stands_in_the_desk_alone() {
    only("javafx..", "slabwright.desk..");
  }

  @Test
  void view_models_of_the_desk_know_no_scene() {
    check(
        noClasses()
            .that()
            .resideInAPackage("slabwright.desk.model..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("javafx.scene.."),
        "slabwright.desk.model..");
  }

  @Test
  void the_thread_of_the_screen_works_out_no_geometry() {
    var dear =
        Set.of("union", "intersect", "minus", "offset", "opened", "partsWhere", "labelPoint");
    check(
        noClasses()
            .that()
            .resideInAPackage("slabwright.desk..")
            .and()
            .resideOutsideOfPackages("slabwright.desk.model..", "slabwright.desk.start..")
            .should()
            .callMethodWhere(
                target(owner(assignableTo(Region.class)))
                    .and(target(nameMatching(String.join("|", dear)))))
            .orShould()
            .callMethod(FloorTakeoff.class, "of", FloorArea.class),
        "slabwright.desk.cards..",
        "slabwright.desk.canvas..");
  }

  @Test
  void jts_stands_in_shape_alone() {
    only("org.locationtech.jts..", "slabwright.shape..");
  }

  @Test
  void awt_geometry_stands_in_artwork_drawing_pdfin_and_cutfile_alone() {
    only(
        "java.awt.geom..",
        "slabwright.inlay.artwork..",
        "slabwright.drawing..",
        "slabwright.pdfin..",
        "slabwright.inlay.cutfile..");
  }

  @Test
  void batik_stands_in_artwork_and_drawing_alone() {
    only("org.apache.batik..", "slabwright.inlay.artwork..", "slabwright.drawing..");
  }

  @Test
  void jackson_stands_in_store_and_the_json_report_alone() {
    only("com.fasterxml.jackson..", "slabwright.store..", "slabwright.sheets.json..");
  }

  @Test
  void pdfbox_stands_in_drawing_and_pdfin_alone() {
    only("org.apache.pdfbox..", "slabwright.drawing..", "slabwright.pdfin..");
  }

  @Test
  void hipparchus_stands_in_tape_alone() {
    only("org.hipparchus..", "slabwright.tape..");
  }

  @Test
  void picocli_stands_in_the_command_line_alone() {
    only("picocli..", "slabwright.cli..");
  }

  private static void only(String library, String... rooms) {
    check(
        noClasses()
            .that(com.tngtech.archunit.base.DescribedPredicate.not(resideInAnyPackage(rooms)))
            .should()
            .dependOnClassesThat()
            .resideInAPackage(library),
        rooms);
  }

  @Test
  void nothing_keeps_changeable_static_state() {
    check(
        com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields()
            .that()
            .areStatic()
            .should()
            .beFinal(),
        "slabwright..");
  }

  @Test
  void every_class_stands_in_a_room() {
    String[] all =
        Stream.concat(Stream.of("slabwright"), rooms().map(HouseTest::room)).toArray(String[]::new);
    check(classes().should().resideInAnyPackage(all), "slabwright");
  }
}
