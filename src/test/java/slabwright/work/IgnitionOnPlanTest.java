package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.work.book.ShopBook;

/** Whether a floor's list against fire speaks of spraying and of film pulled over solvent. */
class IgnitionOnPlanTest {
  private static final String HALL = "reading-hall";
  private static final ShopBook ROLLED =
      WorkSamples.bookWith("product", "base-dye", "laid by", "roller");

  /** The hall with solvent dye on the floor and a graphic in the dye named. */
  private static Site graphicIn(String dye) {
    Site site = WorkSamples.solventHall();
    FloorArea hall = site.area(HALL).orElseThrow();
    List<Finish.Coat> coats =
        hall.finish().coats().stream()
            .map(
                c ->
                    c.target() == Finish.Target.INLAY
                        ? new Finish.Coat(dye, c.coats(), c.target())
                        : c)
            .toList();
    FloorArea changed = hall.withFinish(new Finish(hall.finish().exposure(), coats));
    return site.withAreas(
        site.areas().stream().map(a -> a.id().equals(HALL) ? changed : a).toList());
  }

  private static List<String> lines(Site site, ShopBook book) {
    AirPlan air = WorkSamples.plan(site, book).area(HALL).orElseThrow().air().maybe().orElseThrow();
    List<String> before = air.ignition().before().stream().map(m -> m.key()).toList();
    List<String> during = air.ignition().during().stream().map(m -> m.key()).toList();
    return Stream.concat(before.stream(), during.stream()).toList();
  }

  @Test
  void a_graphic_in_solvent_dye_is_sprayed_and_its_film_pulled_over_it() {
    assertThat(lines(graphicIn("inlay-dye"), ROLLED))
        .contains("work.ignition-check.spraying", "work.ignition-check.film-static");
  }

  @Test
  void a_graphic_in_water_over_rolled_solvent_is_neither() {
    assertThat(lines(graphicIn("water-dye"), ROLLED))
        .contains("work.ignition-check.static")
        .doesNotContain("work.ignition-check.spraying", "work.ignition-check.film-static");
  }
}
