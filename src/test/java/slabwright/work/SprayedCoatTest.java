package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;

/**
 * Cut-in is what is painted by brush or small roller before rolling: where a coat is sprayed the
 * walls are masked instead. Common practice, no source.
 */
class SprayedCoatTest {
  private static final String HALL = "reading-hall";

  private static CoatPlan dye(ShopBook book) {
    return WorkSamples.plan(WorkSamples.tramHall(), book)
        .area(HALL)
        .flatMap(a -> a.coat("water-dye"))
        .orElseThrow();
  }

  private static ShopBook laidBy(String tool) {
    return WorkSamples.bookWith("product", "water-dye", "laid by", tool);
  }

  /** 1,634.9 sq ft at the book's 1,800 an hour are 54 min 30 s; nothing is painted by brush. */
  @Test
  void a_sprayed_coat_takes_the_time_of_spraying_alone() {
    CoatPlan dye = dye(laidBy("sprayer"));
    assertThat(dye.job().cutIn()).isZero();
    assertThat(dye.cutIn()).isEqualTo(Figure.known(Duration.ZERO));
    assertThat(dye.coatTime().maybe().orElseThrow())
        .isBetween(Duration.ofSeconds(3269), Duration.ofSeconds(3271));
  }

  @Test
  void what_is_rolled_brushed_or_padded_is_cut_in_and_so_is_what_nobody_knows() {
    for (String tool : List.of("roller", "brush", "pad", "?")) {
      CoatPlan dye = dye(laidBy(tool));
      assertThat(dye.job().cutIn()).as(tool).isPositive();
      assertThat(dye.cutIn().maybe().orElseThrow()).as(tool).isPositive();
    }
  }

  /** Vapour set free in the time of a cut-in that nobody does would be told too thin. */
  @Test
  void its_vapour_is_set_free_in_the_time_of_spraying() {
    WorkPlan plan = WorkSamples.plan(WorkSamples.solventHall());
    AreaWorkPlan hall = plan.area(HALL).orElseThrow();
    double minutes =
        hall.air().maybe().flatMap(AirPlan::screening).orElseThrow().steps().stream()
            .filter(s -> s.type().coat().filter(c -> c.place() == 1).isPresent())
            .mapToDouble(s -> s.minutes())
            .max()
            .orElseThrow();
    // 1,634.9 sq ft at the book's 2,000 an hour, in whole minutes
    assertThat(minutes).isEqualTo(50);
  }
}
