package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import slabwright.work.Said;
import slabwright.work.book.Figure;
import slabwright.work.book.Kit;

class ProductAmountProperties {
  @Property(tries = 200)
  void half_the_coverage_doubles_the_volume(
      @ForAll @DoubleRange(min = 1e4, max = 1e9) double area,
      @ForAll @IntRange(min = 1, max = 5) int coats,
      @ForAll @DoubleRange(min = 0.5, max = 30) double coverage,
      @ForAll @DoubleRange(min = 0, max = 0.9) double loss) {
    double volume = ProductAmount.volume(area, coats, coverage, loss);
    double doubled = ProductAmount.volume(area, coats, coverage / 2, loss);
    assertThat(doubled).isCloseTo(2 * volume, within(volume * 1e-9));
  }

  @Property(tries = 200)
  void batches_sum_to_the_volume_and_none_outlasts_its_working_time(
      @ForAll @DoubleRange(min = 1e5, max = 5e8) double needed,
      @ForAll @DoubleRange(min = 1e6, max = 2e7) double kit,
      @ForAll boolean splits,
      @ForAll @IntRange(min = 1, max = 4) int people) {
    BatchParameters job = job(needed, kit, splits, people);
    if (job.plan() instanceof Figure.Known<Batches> known) {
      Batches b = known.value();
      assertThat(b.used()).isCloseTo(needed, within(needed * 1e-9));
      assertThat(b.mixed()).isGreaterThanOrEqualTo(needed * (1 - 1e-9));
      for (Batches.Batch batch : b.list()) {
        assertThat(batch.laying().plus(job.mixing()))
            .isLessThanOrEqualTo(job.workingTime().plusMillis(2));
        assertThat(splits || isWhole(batch.mixed() / kit)).isTrue();
      }
    } else {
      assertThat(splits).isFalse();
      assertThat(job.timeFor(kit))
          .isGreaterThan(job.workingTime().minus(job.mixing()).minusMillis(2));
    }
  }

  @Property(tries = 200)
  void kits_cover_what_is_needed_with_less_than_the_smallest_left_over(
      @ForAll @DoubleRange(min = 1e3, max = 4e8) double needed,
      @ForAll @DoubleRange(min = 5e5, max = 5e6) double small,
      @ForAll @IntRange(min = 2, max = 6) int times) {
    Kits kits = Kits.of(needed, List.of(kit(small), kit(small * times)));
    assertThat(kits.bought()).isGreaterThanOrEqualTo(needed * (1 - 1e-9));
    assertThat(kits.leftOver()).isLessThan(small);
  }

  private static boolean isWhole(double x) {
    return Math.abs(x - Math.rint(x)) < 1e-9;
  }

  private static Kit kit(double mm3) {
    return new Kit(mm3, Figure.missing(Said.text("price")));
  }

  private static BatchParameters job(double needed, double kit, boolean splits, int people) {
    return new BatchParameters(
        needed,
        List.of(kit),
        splits,
        Duration.ofMinutes(40),
        Duration.ofMinutes(5),
        Optional.empty(),
        12,
        0.08,
        6e7,
        people);
  }
}
