package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slabwright.floor.Floors;
import slabwright.site.AirSpace;
import slabwright.site.AreaDetails;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.MarkKind;
import slabwright.site.MoistureReading;
import slabwright.site.Setting;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.units.Length;
import slabwright.work.WorkSamples;

/** Which questions are open, by their keys; the reasons stand beside them. */
class WalkthroughTest {
  private static final Site SITE = WorkSamples.tramHall();

  private static final FloorArea BARE = Floors.rectangle(8_000, 5_000);

  private static List<String> asked(FloorArea area, int section) {
    HandoverDocument doc = Walkthrough.of(SITE.withAreas(List.of(area)), List.of());
    return keys(doc.sections().get(section));
  }

  private static List<String> keys(HandoverDocument.Section section) {
    assertThat(section.rows()).allMatch(HandoverDocument.Row::tick);
    return section.rows().stream()
        .map(r -> r.label().key().replace("work.walkthrough.", ""))
        .toList();
  }

  @Test
  void of_an_indoor_floor_of_which_nothing_is_known_everything_is_asked() {
    assertThat(asked(BARE.withSetting(Setting.INDOOR), 1))
        .containsExactly(
            "year-built",
            "post-tensioned",
            "heated",
            "scratch-hardness-mohs",
            "moisture-in-the-slab-astm",
            "is-there-a-vapour-barrier",
            "how-thick-is-the-slab",
            "air-temperature",
            "air-humidity",
            "surface-temperature",
            "ceiling-height",
            "how-much-fresh-air-can",
            "pilot-lights-heaters-flames",
            "smoke-detectors-and-sprinkler",
            "where-can-air-be-drawn",
            "power-points",
            "which-machine-comes",
            "does-it-get-wet-in",
            "does-the-sun-fall-on",
            "chairs-carts-many-feet",
            "how-much-aggregate-shall-show",
            "which-finish");
  }

  @Test
  void outdoors_neither_probes_nor_vapour_nor_traffic_are_asked_about() {
    assertThat(asked(BARE.withSetting(Setting.OUTDOOR), 1))
        .containsExactly(
            "year-built",
            "post-tensioned",
            "heated",
            "scratch-hardness-mohs",
            "is-there-a-vapour-barrier",
            "how-thick-is-the-slab",
            "air-temperature",
            "air-humidity",
            "surface-temperature",
            "does-it-get-wet-in",
            "does-the-sun-fall-on",
            "how-much-aggregate-shall-show",
            "which-finish");
  }

  private static MoistureReading reading(MoistureReading.Test test) {
    return new MoistureReading(test, 70, "");
  }

  private static FloorArea known(MoistureReading.Test test) {
    FloorArea hall = SITE.areas().get(0);
    Slab slab =
        new Slab(
            OptionalDouble.of(5),
            OptionalDouble.of(40),
            Optional.of(Length.mm(150)),
            List.of(reading(test)),
            OptionalDouble.of(18),
            OptionalDouble.of(20),
            OptionalDouble.of(50),
            Optional.of(true));
    return Floors.with(
            BARE,
            Floors.box("i", new MarkKind.IgnitionSource("boiler"), 1_000, 1_000, 1_100, 1_100),
            Floors.box("d", new MarkKind.Detector(), 2_000, 1_000, 2_100, 1_100),
            Floors.box("o", new MarkKind.AirOutlet(), 3_000, 1_000, 3_100, 1_100),
            Floors.box("p", new MarkKind.PowerPoint("16 A"), 4_000, 1_000, 4_100, 1_100))
        .withSetting(Setting.INDOOR)
        .withSlab(slab)
        .withAir(new AirSpace(Optional.of(Length.mm(4_000)), 1_200, 2))
        .withUse(new FloorUse(Optional.of(false), Optional.of(false), Optional.of(false)))
        .withMachines(List.of(Floors.machine(800, 700, 50)))
        .withFinish(hall.finish())
        .withDetails(
            BARE.details()
                .withBuilt(
                    new AreaDetails.Built(
                        OptionalInt.of(1960), Optional.of(false), Optional.of(false))));
  }

  @Test
  void of_a_floor_of_which_all_is_known_nothing_is_asked_and_a_sheet_is_no_probe() {
    assertThat(asked(known(MoistureReading.Test.F2170), 1)).isEmpty();
    assertThat(asked(known(MoistureReading.Test.D4263), 1))
        .containsExactly("moisture-in-the-slab-astm");
  }

  @Test
  void of_every_site_it_is_asked_who_opens_locks_stops_and_switches_alarms() {
    assertThat(asked(BARE, 0))
        .containsExactly(
            "who-opens",
            "who-locks",
            "who-may-say-stop",
            "which-other-trades-are-there",
            "when-are-trades-off",
            "which-neighbours-share-air-gas",
            "where-is-power-of-which",
            "where-is-water",
            "from-when-to-when-may",
            "which-alarms-are-there",
            "who-switches-alarms",
            "where-may-dust-slurry-cans",
            "how-wide-are-doors-ramps");
    HandoverDocument undated = Walkthrough.of(SITE.withStart(Optional.empty()), List.of());
    assertThat(keys(undated.sections().get(0))).startsWith("when-can-work-start").hasSize(14);
  }
}
