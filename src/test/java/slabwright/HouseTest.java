package slabwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import io.soabase.recordbuilder.core.RecordBuilderGenerated;
import java.awt.Desktop;
import java.io.IOException;
import java.net.DatagramSocket;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URL;
import java.net.URLConnection;
import java.nio.channels.NetworkChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.HostServices;
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

  private static final Path SOURCE = Path.of("src/main/java/slabwright");
  private static final Pattern LINK = Pattern.compile("\\{@link[\\s*]+(\\w+)");

  private static final Pattern TEST =
      Pattern.compile("\\n *@(Test|ParameterizedTest|Property|Example)\\b");

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
              "picture",
              List.of("units", "shape", "site", "floor", "inlay", "work", "drawing", "pdfin")),
          Map.entry(
              "figures",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin")),
          Map.entry(
              "sheets",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin", "picture", "figures")),
          Map.entry(
              "project",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin", "picture", "figures", "sheets", "store")),
          Map.entry("store", List.of("units", "shape", "site")),
          Map.entry(
              "cli",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin", "picture", "figures", "sheets", "store", "project")),
          Map.entry(
              "desk",
              List.of(
                  "units", "words", "shape", "site", "tape", "floor", "inlay", "work", "drawing",
                  "pdfin", "picture", "figures", "sheets", "project")));

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

  /** Also not by way of another room: what a card asks for was worked out before. */
  @Test
  void nothing_that_a_card_or_the_canvas_calls_leads_to_geometry() {
    Map<String, String> leads = leadsToGeometry();
    assertThat(leads).as("floors are taken off by geometry").containsKey(TAKE_OFF);
    Set<String> found = new TreeSet<>();
    for (JavaClass c : CLASSES) {
      if (SCREEN.test(c)) {
        c.getAccessesFromSelf().stream()
            .filter(a -> leads.containsKey(a.getTarget().getFullName()))
            .forEach(a -> found.add(a.getOrigin().getFullName() + way(leads, a.getTarget())));
      }
    }
    assertThat(found).isEmpty();
  }

  private static final String TAKE_OFF =
      "slabwright.floor.FloorTakeoff.of(slabwright.site.FloorArea)";

  private static final DescribedPredicate<JavaClass> SCREEN =
      resideInAnyPackage(
          "slabwright.desk.cards..",
          "slabwright.desk.canvas..",
          "slabwright.desk.shell..",
          "slabwright.desk.tool..");

  /** Each code unit outside the desk that comes to a dear operation, with the next one there. */
  private static Map<String, String> leadsToGeometry() {
    var dear =
        Set.of(
            "union", "intersect", "minus", "offset", "opened", "partsWhere", "labelPoint", "clip");
    Map<String, String> next = new HashMap<>();
    Deque<JavaCodeUnit> open = new ArrayDeque<>();
    for (JavaCodeUnit m : CLASSES.get(Region.class).getCodeUnits()) {
      if (dear.contains(m.getName())) {
        next.put(m.getFullName(), "");
        open.add(m);
      }
    }
    while (!open.isEmpty()) {
      JavaCodeUnit m = open.remove();
      for (JavaAccess<?> a : m.getAccessesToSelf()) {
        JavaCodeUnit from = a.getOrigin();
        boolean desk = resideInAPackage("slabwright.desk..").test(from.getOwner());
        if (!desk && next.putIfAbsent(from.getFullName(), m.getFullName()) == null) {
          open.add(from);
        }
      }
    }
    return next;
  }

  private static String way(Map<String, String> next, AccessTarget from) {
    StringBuilder way = new StringBuilder();
    for (String at = from.getFullName(); !at.isEmpty(); at = next.get(at)) {
      way.append(" -> ").append(at);
    }
    return way.toString();
  }

  @Test
  void jts_stands_in_shape_alone() {
    only("org.locationtech.jts..", "slabwright.shape..");
  }

  @Test
  void awt_geometry_stands_in_artwork_drawing_and_pdfin_alone() {
    only(
        "java.awt.geom..",
        "slabwright.inlay.artwork",
        "slabwright.inlay.artwork.batik",
        "slabwright.inlay.artwork.pdf",
        "slabwright.inlay.artwork.picture",
        "slabwright.drawing.paint",
        "slabwright.pdfin..");
  }

  @Test
  void batik_stands_in_its_package_of_artwork_alone() {
    only("org.apache.batik..", "slabwright.inlay.artwork.batik");
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
  void hipparchus_stands_in_shape_alone() {
    only("org.hipparchus..", "slabwright.shape..");
  }

  @Test
  void picocli_stands_in_the_command_line_alone() {
    only("picocli..", "slabwright.cli..");
  }

  /** The library is used in these packages alone, and in each of them it is used. */
  private static void only(String library, String... packages) {
    for (String p : packages) {
      assertThat(
              CLASSES.stream()
                  .filter(resideInAPackage(p))
                  .anyMatch(c -> dependsOn(c, resideInAPackage(library))))
          .as("%s uses %s; an exemption that nothing needs is taken away", p, library)
          .isTrue();
    }
    forbid(not(resideInAnyPackage(packages)), library);
  }

  private static boolean dependsOn(JavaClass c, DescribedPredicate<JavaClass> library) {
    return c.getDirectDependenciesFromSelf().stream()
        .anyMatch(d -> library.test(d.getTargetClass()));
  }

  private static void forbid(DescribedPredicate<JavaClass> these, String... libraries) {
    noClasses()
        .that(these)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(libraries)
        .check(CLASSES);
  }

  /** The packages, which must exist, know none of the others, which must exist too. */
  private static void blind(String those, String... others) {
    check(
        noClasses()
            .that()
            .resideInAPackage(those)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(others),
        Stream.concat(Stream.of(those), Stream.of(others)).toArray(String[]::new));
  }

  @Test
  void packages_use_each_other_in_one_direction() {
    check(slices().matching("slabwright.(**)").should().beFreeOfCycles(), "slabwright..");
  }

  @Test
  void models_of_the_desk_know_nothing_of_what_shows_them() {
    blind(
        "slabwright.desk.model..",
        "slabwright.desk.tool..",
        "slabwright.desk.canvas..",
        "slabwright.desk.cards..",
        "slabwright.desk.shell..");
  }

  @Test
  void the_layout_of_pages_knows_nothing_of_floors() {
    blind(
        "slabwright.sheets.page..",
        "slabwright.site..",
        "slabwright.floor..",
        "slabwright.inlay..",
        "slabwright.work..",
        "slabwright.figures..");
  }

  @Test
  void the_doors_ask_project_for_cut_files_and_numbers() {
    for (String door : List.of("slabwright.cli..", "slabwright.desk..")) {
      blind(
          door,
          "slabwright.inlay.cutfile..",
          "slabwright.sheets.json..",
          "slabwright.sheets.csv..");
    }
  }

  @Test
  void artwork_knows_no_format() {
    blind(
        "slabwright.inlay.artwork",
        "slabwright.inlay.artwork.css..",
        "slabwright.inlay.artwork.batik..");
  }

  @Test
  void nothing_opens_a_connection_or_starts_another_program() {
    DescribedPredicate<JavaClass> ways =
        belongToAnyOf(
                URLConnection.class,
                Socket.class,
                ServerSocket.class,
                DatagramSocket.class,
                ProcessBuilder.class,
                Desktop.class)
            .or(assignableTo(URLConnection.class))
            .or(assignableTo(NetworkChannel.class))
            .or(resideInAPackage("java.net.http.."));
    check(
        noClasses()
            .should()
            .dependOnClassesThat(ways)
            .orShould()
            .callMethodWhere(
                target(owner(assignableTo(URL.class)))
                    .and(target(nameMatching("open.*|getContent"))))
            .orShould()
            .callMethodWhere(
                target(owner(assignableTo(Runtime.class))).and(target(nameMatching("exec")))),
        "slabwright..");
  }

  /** The folder that files were saved into is shown by the system, in one place. */
  @Test
  void only_the_application_hands_a_folder_to_the_system() {
    check(
        noClasses()
            .that()
            .doNotHaveFullyQualifiedName("slabwright.desk.DeskApp")
            .should()
            .dependOnClassesThat(assignableTo("javafx.application.HostServices")),
        "slabwright..");
    assertThat(dependsOn(CLASSES.get("slabwright.desk.DeskApp"), assignableTo(HostServices.class)))
        .isTrue();
  }

  /** Public for what stands outside the program: the system starts it. */
  private static final Set<String> STARTED_FROM_OUTSIDE =
      Set.of("slabwright.Main", "slabwright.desk.DeskApp");

  @Test
  void what_is_public_is_used_outside_its_package() {
    Set<String> idle =
        CLASSES.stream()
            .filter(HouseTest::isPublicTopLevel)
            .filter(c -> !c.isAnnotatedWith(RecordBuilderGenerated.class))
            .filter(c -> CLASSES.stream().noneMatch(user -> usesFromOutside(user, c)))
            .filter(c -> CLASSES.stream().noneMatch(door -> handsOut(door, c)))
            .filter(c -> c.getFields().stream().noneMatch(HouseTest::isInlined))
            .map(JavaClass::getName)
            .collect(Collectors.toCollection(TreeSet::new));

    assertThat(idle).isEqualTo(STARTED_FROM_OUTSIDE);
  }

  private static final Set<JavaModifier> CONSTANT =
      Set.of(JavaModifier.PUBLIC, JavaModifier.STATIC, JavaModifier.FINAL);

  private static boolean isPublicTopLevel(JavaClass c) {
    return c.isTopLevelClass() && c.getModifiers().contains(JavaModifier.PUBLIC);
  }

  private static boolean usesFromOutside(JavaClass user, JavaClass used) {
    return !user.getPackageName().equals(used.getPackageName())
        && user.getDirectDependenciesFromSelf().stream()
            .anyMatch(d -> isPartOf(d.getTargetClass(), used));
  }

  /** Whether a caller of the public type's public members gets or gives the other type. */
  private static boolean handsOut(JavaClass door, JavaClass other) {
    return door.getPackageName().equals(other.getPackageName())
        && door.getModifiers().contains(JavaModifier.PUBLIC)
        && !isPartOf(door, other)
        && door.getMembers().stream()
            .filter(m -> m.getModifiers().contains(JavaModifier.PUBLIC))
            .anyMatch(m -> m.getAllInvolvedRawTypes().stream().anyMatch(t -> isPartOf(t, other)));
  }

  /** A public constant that the compiler writes into its users, so that none of them shows. */
  private static boolean isInlined(JavaField f) {
    return f.getModifiers().containsAll(CONSTANT)
        && (f.getRawType().isPrimitive() || f.getRawType().isEquivalentTo(String.class));
  }

  private static boolean isPartOf(JavaClass c, JavaClass topLevel) {
    return outermost(c.getName()).equals(topLevel.getName());
  }

  private static String outermost(String name) {
    int nested = name.indexOf('$');
    return nested < 0 ? name : name.substring(0, nested);
  }

  @Test
  void nothing_keeps_changeable_static_state() {
    check(fields().that().areStatic().should().beFinal(), "slabwright..");
  }

  /** Or one plan would give two papers. */
  @Test
  void no_copy_is_gone_through_in_another_order_at_every_start() {
    check(
        noClasses()
            .should()
            .callMethodWhere(
                target(owner(belongToAnyOf(Map.class, Set.class)))
                    .and(target(nameMatching("copyOf"))))
            .orShould()
            .callMethodWhere(
                target(owner(assignableTo(Collectors.class)))
                    .and(target(nameMatching("toUnmodifiable(Map|Set)")))),
        "slabwright..");
  }

  @Test
  void every_class_stands_in_a_room() {
    String[] all =
        Stream.concat(Stream.of("slabwright"), rooms().map(HouseTest::room)).toArray(String[]::new);
    check(classes().should().resideInAnyPackage(all), "slabwright");
  }

  /** Every folder of the source with a class in it. */
  static Stream<Path> packages() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCE)) {
      return files
          .filter(f -> f.toString().endsWith(".java"))
          .map(Path::getParent)
          .distinct()
          .sorted()
          .toList()
          .stream();
    }
  }

  /** What surefire includes goes by the file's name; a test of another name would never run. */
  @Test
  void every_test_has_a_name_by_which_it_runs() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      List<Path> tests = files.filter(f -> f.toString().endsWith(".java")).toList();
      assertThat(tests).hasSizeGreaterThan(100);
      for (Path file : tests) {
        String text = Files.readString(file);
        boolean runs =
            TEST.matcher(text).find()
                && !text.contains("@EnabledIfSystemProperty(")
                && !text.contains("\nabstract class");
        assertThat(!runs || file.toString().matches(".*(Test|Properties)\\.java"))
            .as("%s is named ...Test or ...Properties", file)
            .isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("packages")
  void every_package_has_a_map_and_the_map_names_only_classes_that_stand_in_it(Path folder)
      throws IOException {
    Path map = folder.resolve("package-info.java");
    assertThat(map).as("the map of %s: what it is, and where to begin reading", folder).exists();
    String text = Files.readString(map);
    assertThat(text.lines().count()).as("lines of %s", map).isBetween(5L, 30L);
    List<Path> named =
        LINK.matcher(text)
            .results()
            .map(link -> folder.resolve(link.group(1) + ".java"))
            .distinct()
            .toList();
    assertThat(named).as("classes that %s links to", map).isNotEmpty().allMatch(Files::exists);
  }
}
