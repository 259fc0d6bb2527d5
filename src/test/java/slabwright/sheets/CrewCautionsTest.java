package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.site.Site;
import slabwright.site.job.JobCrew;
import slabwright.words.Words;

/** What the crew is told of a day's dangers, as it stands on paper and on the phone. */
class CrewCautionsTest {
  private static final Pattern ROWS = Pattern.compile("</span><br>([^<]+)");

  private static PacketContents job(String name) {
    return SheetSamples.sample(name).job(PaperSize.LETTER, Words.english());
  }

  /** Each day with work on it. */
  private static List<String> days(PacketContents job) {
    return Stream.of(CrewPacket.html(job).split("<section ", -1))
        .filter(d -> ROWS.matcher(d).find())
        .toList();
  }

  private static String work(String day) {
    return ROWS.matcher(day).results().map(MatchResult::group).collect(Collectors.joining("; "));
  }

  /** They gave way where fire and air had taken the five places: on the days of solvent. */
  @ParameterizedTest
  @ValueSource(strings = {"tram-hall", "bike-workshop"})
  void skin_eyes_and_knees_are_told_on_every_day_that_something_is_laid(String name) {
    Pattern laying = Pattern.compile("Roll |Spray |Mist coat|sample panel|Fill joints");
    int laid = 0;
    for (String day : days(job(name))) {
      if (laying.matcher(work(day)).find()) {
        assertThat(day)
            .contains("Gloves, goggles as the data sheet says; knee pads; wash before you eat");
        laid++;
      }
      if (work(day).contains("Lay stencil")) {
        assertThat(day).containsIgnoringCase("knee pads");
      }
    }
    assertThat(laid).isPositive();
  }

  /** The only mask of the pages was for dust. */
  @Test
  void whoever_sprays_a_water_borne_dye_is_told_in_its_row_what_to_wear_for_the_mist() {
    String phone = CrewPacket.html(job("tram-hall"));
    for (String row : phone.split("<label class=\"row\">", -1)) {
      assertThat(row.contains("wears breathing protection for mist as the product"))
          .as(row)
          .isEqualTo(row.contains("Spray Water-borne dye"));
    }
    assertThat(phone).contains("Spray Water-borne dye");
  }

  @Test
  void outdoors_no_fan_is_called_for_and_indoors_the_air_goes_by_the_openings_of_the_plan() {
    int indoors = 0;
    int outdoors = 0;
    for (String day : days(job("tram-hall"))) {
      assertThat(day).doesNotContain("doors as drawn");
      if (work(day).contains("Breathing outdoor sealer")) {
        assertThat(day).contains("Outdoors: doors, windows and air intakes beside the floor shut");
        assertThat(day).doesNotContain("fan running");
        outdoors++;
      } else if (day.contains("10 % of LEL")) {
        assertThat(day)
            .contains("before a can is opened: fan running, in by main doors, out by window");
        indoors++;
      }
    }
    assertThat(indoors).isEqualTo(3);
    assertThat(outdoors).isEqualTo(2);
  }

  @Test
  void where_no_mask_for_vapor_is_named_the_crew_reads_from_which_reading_nobody_goes_in() {
    PacketContents job = job("tram-hall");
    assertThat(CrewPacket.html(job))
        .contains("No mask for vapor is named: from 500 ppm of acetone nobody goes in")
        .contains("from 500 nobody is in (no mask is named)");
    JobCrew crew =
        new JobCrew(
            "", List.of(new JobCrew.Person("", "", "full-face, organic vapor")), new TreeMap<>());
    Site named = job.site().withJob(job.site().job().withCrew(crew));
    PacketContents masked =
        new PacketContents(named, job.areas(), job.work(), job.paper(), job.date(), job.words());
    assertThat(CrewPacket.html(masked))
        .doesNotContain("No mask for vapor", "no mask is named")
        .contains("from 500 ppm nobody is in without breathing gear");
  }

  @Test
  void film_is_pulled_grounded_and_under_the_reading_that_lets_people_in() {
    int pulled = 0;
    for (String day : days(job("tram-hall"))) {
      boolean pulls = work(day).contains("Pull stencil");
      assertThat(day.contains("Pull film slowly, grounded, only under 500 ppm")).isEqualTo(pulls);
      pulled += pulls ? 1 : 0;
    }
    assertThat(pulled).isPositive();
  }
}
