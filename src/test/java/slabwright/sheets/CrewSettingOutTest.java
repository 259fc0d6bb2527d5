package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Text;
import slabwright.floor.CutIn;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.RegistrationTick;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;

/** What lies on the floor before the first film, proves it, and comes off again after the last. */
class CrewSettingOutTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static List<String> lines() {
    return HALL.packet(Packet.CREW, PaperSize.LETTER).pages().stream()
        .flatMap(CrewSettingOutTest::lines)
        .toList();
  }

  private static java.util.stream.Stream<String> lines(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words().replace('\u00a0', ' '));
  }

  private static String all() {
    return lines().stream().collect(Collectors.joining(" "));
  }

  private static int count(String said, String words) {
    return (int) Pattern.compile(Pattern.quote(words)).matcher(said).results().count();
  }

  private static PanelPlan panels() {
    return HALL.results().get(0).inlays().get(0).plan().panels().orElseThrow();
  }

  /** The first film was a small one, and only the whole blank could be checked, days later. */
  @Test
  void the_corners_of_the_whole_blank_are_marked_and_measured_before_the_first_film() {
    String said = all();
    int first = said.indexOf("Stencil 1: lay panel");
    int corners = said.indexOf("Mark the corners of the whole blank: ");
    int diagonals = said.indexOf("Check before any film: both diagonals between them measure");
    assertThat(corners).isPositive().isLessThan(diagonals);
    assertThat(diagonals).isLessThan(first);
    double half = panels().blank().width() / 2;
    assertThat(said.substring(corners, diagonals))
        .contains(LengthFormat.show(half, UnitSystem.FEET_INCHES).replace('\u00a0', ' '));
    assertThat(count(said, "every tick on the film lies on the tick of its number"))
        .isEqualTo(panels().local().size())
        .isEqualTo(2);
  }

  @Test
  void every_registration_tick_stands_with_its_two_distances_and_is_explained() {
    List<String> said = lines();
    assertThat(panels().ticks()).hasSizeGreaterThan(10);
    for (RegistrationTick t : panels().ticks()) {
      assertThat(said)
          .contains(Integer.toString(t.number()))
          .contains(LengthFormat.show(t.at().x(), UnitSystem.FEET_INCHES).replace('\u00a0', ' '))
          .contains(LengthFormat.show(t.at().y(), UnitSystem.FEET_INCHES).replace('\u00a0', ' '));
    }
    assertThat(all())
        .contains("Small crosses, on the floor and with the same numbers on the films");
  }

  @Test
  void setting_out_has_its_own_time_after_the_last_dye_of_the_floor_and_before_the_film() {
    DayPlan days = HALL.job(PaperSize.LETTER).work().days().maybe().orElseThrow();
    ScheduledStep out = step(days, StepKind.SET_OUT);
    assertThat(out.worked().toMinutes()).isEqualTo(45);
    assertThat(out.end()).isBeforeOrEqualTo(step(days, StepKind.LAY_STENCIL).start());
    assertThat(out.start()).isAfterOrEqualTo(step(days, StepKind.DYE_RESIDUE_OFF).end());
    assertThat(all()).contains("Set out Heron ring: snap the lines");
  }

  private static ScheduledStep step(DayPlan days, StepKind kind) {
    return days.steps().stream()
        .filter(s -> s.task().type().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /** A sealer that is cut in by brush against masked walls stops short of them. */
  @Test
  void film_fan_and_ticks_come_off_once_and_before_what_they_are_in_the_way_of() {
    String phone = CrewPacket.html(HALL.job(PaperSize.LETTER)).replace('\u00a0', ' ');
    String off = "First: all masking film and tape off, the fan and its duct out of the way";
    assertThat(count(phone, off)).isEqualTo(1);
    int sealer = phone.indexOf("Roll Water-borne penetrating sealer");
    assertThat(phone.indexOf(off)).isBetween(sealer, phone.indexOf("usual loss", sealer));
    // stencils 1 and 2 come up with work to do after them that day: none is tomorrow's first
    assertThat(count(phone, "ticks stay")).isEqualTo(2);
    assertThat(count(phone, "take the registration ticks and the snapped lines off")).isEqualTo(1);
  }

  /** The last page said that they came out; no row before it said to take them out. */
  @Test
  void tools_and_waste_are_told_out_of_a_floor_once_and_in_the_row_of_the_coat_that_closes_it() {
    List<String> rows = rows(HALL);
    assertThat(rows).filteredOn(r -> r.contains("First: tools, waste")).hasSize(2);
    assertThat(rows)
        .filteredOn(r -> r.contains("products out of Reading hall"))
        .singleElement(InstanceOfAssertFactories.STRING)
        .contains("Roll Two-part clear topcoat (invented), coat 2 of 2");
    assertThat(rows)
        .filteredOn(r -> r.contains("products out of Terrace"))
        .singleElement(InstanceOfAssertFactories.STRING)
        .contains("Roll Breathing outdoor sealer (invented), coat 2 of 2");
    assertThat(rows(SheetSamples.sample("bike-workshop")))
        .filteredOn(r -> r.contains("First: tools, waste"))
        .singleElement(InstanceOfAssertFactories.STRING)
        .contains("products out of Workshop", "Roll Two-part clear topcoat", "coat 1 of 1");
  }

  /** Read like the legs at the wall, those at the mark put it inside the lending counter. */
  @Test
  void every_leg_of_a_right_angle_is_said_with_its_way_and_drawn_with_its_length() {
    List<String> hall = lines();
    assertThat(String.join(" ", hall))
        .contains(
            "Square off wall A: 12' 0\" along the wall to the left as you look in, 16' 0\""
                .replace('\'', '\u2032')
                .replace('"', '\u2033'))
        .contains(
            "Square off there: 12' 0\" on along the line, 16' 0\" to the "
                .replace('\'', '\u2032')
                .replace('"', '\u2033'));
    for (String leg : List.of("12\u2032 0\u2033", "16\u2032 0\u2033", "20\u2032 0\u2033")) {
      assertThat(hall).filteredOn(leg::equals).hasSizeGreaterThanOrEqualTo(2);
    }
  }

  /** A row that says "A, B" and "B on the cross" puts a person there. */
  @Test
  void the_letters_of_panels_are_told_from_those_of_people() {
    String hall = CrewPacket.html(HALL.job(PaperSize.LETTER));
    assertThat(hall)
        .containsPattern("of Heron ring: panel F to its registration ticks; press")
        .containsPattern("of Heron ring: panel B on the cross, then panels C, A; press");
    assertThat(CrewPacket.html(SheetSamples.sample("bike-workshop").job(PaperSize.LETTER)))
        .containsPattern("of Wheel: panels A, B, each to its registration ticks; press");
  }

  /** Taken at its word, a row that masks the walls has counter, booths and columns dyed. */
  @Test
  void the_row_of_masking_names_all_that_is_masked_and_as_much_is_bought() {
    assertThat(CrewPacket.html(HALL.job(PaperSize.LETTER)))
        .contains(
            "Mask with film and tape: walls, the line across each doorway, counters and islands,"
                + " booths, columns, glass beside the doors");
    for (SheetSamples sample : List.of(HALL, SheetSamples.sample("bike-workshop"))) {
      double dyed = CutIn.STAIN.length(sample.job(PaperSize.LETTER).areas().get(0).takeoff());
      assertThat(sample.job(PaperSize.LETTER).work().areas().get(0).wallMasking())
          .isCloseTo(dyed, within(1.0));
    }
  }

  private static List<String> rows(SheetSamples sample) {
    String phone = CrewPacket.html(sample.job(PaperSize.LETTER)).replace('\u00a0', ' ');
    return List.of(phone.split("<label class=\"row\">", -1));
  }
}
