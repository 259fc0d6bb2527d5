package slabwright.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

class InlayFileNamesTest {
  private static Inlay inlay(String id, String name) {
    return new Inlay(
        id,
        name,
        "g.svg",
        "",
        Spot.mm(0, 0),
        Length.mm(900),
        0,
        StencilSpec.forRoll(Length.mm(600)));
  }

  private static FloorArea area(String id, String name, Inlay... inlays) {
    return FloorArea.of(id, name, List.of()).withInlays(Arrays.asList(inlays));
  }

  private interface Naming {
    String of(InlayFileNames names, FloorArea area, Inlay inlay);
  }

  /** The names of all inlays, in the site's order. */
  private static List<String> all(Naming naming, FloorArea... areas) {
    Site site = Site.empty("Site", UnitSystem.METRIC).withAreas(Arrays.asList(areas));
    InlayFileNames names = new InlayFileNames(site);
    return site.areas().stream()
        .flatMap(a -> a.inlays().stream().map(i -> naming.of(names, a, i)))
        .toList();
  }

  @Test
  void a_name_that_is_the_only_one_stays_plain() {
    FloorArea hall = area("hall", "Hall", inlay("i1", "Heron"), inlay("i2", "Ring"));
    assertThat(all(InlayFileNames::title, hall)).containsExactly("Heron", "Ring");
    assertThat(all(InlayFileNames::id, hall)).containsExactly("hall_i1", "hall_i2");
  }

  @Test
  void inlays_of_two_areas_that_share_an_id_and_a_name_carry_their_area() {
    FloorArea hall = area("hall", "Hall", inlay("i1", "Heron"), inlay("i2", "Ring"));
    FloorArea bar = area("bar", "Bar", inlay("i1", "heron!"));
    assertThat(all(InlayFileNames::title, hall, bar))
        .containsExactly("Heron, Hall", "Ring", "heron!, Bar");
    assertThat(all(InlayFileNames::id, hall, bar)).containsExactly("hall_i1", "hall_i2", "bar_i1");
  }

  @Test
  void inlays_of_one_area_that_share_a_name_are_numbered() {
    FloorArea hall = area("hall", "Hall", inlay("i1", "Heron"), inlay("i2", "Heron"));
    assertThat(all(InlayFileNames::title, hall)).containsExactly("Heron, Hall", "Heron, Hall-2");
  }

  @Test
  void a_longer_name_never_takes_the_plain_name_of_another() {
    FloorArea hall = area("hall", "Hall", inlay("i1", "Heron"), inlay("i2", "Heron Hall"));
    FloorArea bar = area("bar", "Bar", inlay("i1", "Heron"));
    assertThat(all(InlayFileNames::title, hall, bar))
        .containsExactly("Heron, Hall-2", "Heron Hall", "Heron, Bar");
  }

  @Test
  void ids_that_run_into_one_another_when_joined_are_told_apart() {
    FloorArea one = area("a_b", "One", inlay("c", "Heron"));
    FloorArea two = area("a", "Two", inlay("b_c", "Ring"), inlay("B_C", "Fish"));
    assertThat(all(InlayFileNames::id, one, two)).containsExactly("a_b_c", "a_b_c-2", "a_B_C-3");
  }
}
