package slabwright.work.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Floors;
import slabwright.site.FloorArea;
import slabwright.site.MarkKind;
import slabwright.site.Slab;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.work.Said;
import slabwright.work.book.Figure;
import slabwright.work.step.StepPlace;

/** A floor of 8 by 5 m with three trenches of 0.8, a patch of 1 and a residue of 2 m². */
class PrepParametersTest {
  private static MarkKind.Trench trench(TrenchLevel lie, Double off) {
    return new MarkKind.Trench(lie, false, Optional.ofNullable(off).map(Length::mm));
  }

  private static final FloorArea FLOOR =
      Floors.with(
          Floors.rectangle(8_000, 5_000),
          Floors.box("low", trench(TrenchLevel.LOW, 12.0), 500, 500, 2_500, 900),
          Floors.box("proud", trench(TrenchLevel.PROUD, null), 500, 1_500, 2_500, 1_900),
          Floors.box("flush", trench(TrenchLevel.FLUSH, null), 500, 2_500, 2_500, 2_900),
          Floors.box("patch", new MarkKind.Patch(), 4_000, 500, 5_000, 1_500),
          Floors.box("glue", new MarkKind.Residue("glue"), 4_000, 2_000, 6_000, 3_000),
          Floors.box("plinth", new MarkKind.Column(), 7_000, 1_000, 7_400, 1_400));

  private static PrepParameters of(FloorArea floor) {
    return PrepParameters.of(FloorTakeoff.of(floor));
  }

  private static double area(PrepZone.Kind kind) {
    return of(FLOOR).of(kind).stream().mapToDouble(PrepZone::area).sum();
  }

  @Test
  void every_zone_is_of_the_kind_that_its_mark_is() {
    assertThat(area(PrepZone.Kind.TRENCH_LOW)).isCloseTo(0.8e6, within(1.0));
    assertThat(area(PrepZone.Kind.TRENCH_PROUD)).isCloseTo(0.8e6, within(1.0));
    assertThat(area(PrepZone.Kind.TRENCH_FLUSH)).isCloseTo(0.8e6, within(1.0));
    assertThat(area(PrepZone.Kind.PATCH)).isCloseTo(1e6, within(1.0));
    assertThat(area(PrepZone.Kind.RESIDUE)).isCloseTo(2e6, within(1.0));
    assertThat(area(PrepZone.Kind.OLD_CONCRETE)).isCloseTo(40e6 - 5.4e6 - 0.16e6, within(1.0));
    assertThat(of(FLOOR).area()).isCloseTo(40e6 - 0.16e6, within(1.0));
  }

  @Test
  void a_zone_is_named_by_its_mark_and_the_rest_is_the_old_slab() {
    PrepZone glue = of(FLOOR).of(PrepZone.Kind.RESIDUE).get(0);
    assertThat(glue.place()).isEqualTo(new StepPlace.Zone("glue"));
    assertThat(Said.of(glue.name())).contains("glue");
    PrepZone slab = of(FLOOR).of(PrepZone.Kind.OLD_CONCRETE).get(0);
    assertThat(slab.place()).isEqualTo(StepPlace.WHOLE_FLOOR);
  }

  @Test
  void what_lies_low_or_proud_is_levelled_first_with_what_it_is_off() {
    List<PrepParameters.ToLevel> all = of(FLOOR).toLevel();
    assertThat(all)
        .extracting(PrepParameters.ToLevel::place)
        .containsExactly(new StepPlace.Zone("low"), new StepPlace.Zone("proud"));
    assertThat(all).extracting(PrepParameters.ToLevel::isLow).containsExactly(true, false);
    assertThat(all.get(0).off()).hasValue(12);
    assertThat(all.get(1).off()).isEmpty();
    assertThat(all.get(0).mm2()).isCloseTo(0.8e6, within(1.0));
  }

  @Test
  void without_a_machine_all_is_ground_by_hand() {
    assertThat(of(FLOOR).machine()).isZero();
    assertThat(of(FLOOR).hand()).isCloseTo(of(FLOOR).area(), within(1e-6));
  }

  private static Figure<Double> warmer(OptionalDouble air, OptionalDouble surface) {
    Slab slab = Slab.UNKNOWN.withAirC(air).withSurfaceC(surface);
    return of(Floors.rectangle(4_000, 3_000).withSlab(slab)).warmer();
  }

  @Test
  void fillers_set_by_the_warmer_of_slab_and_air_and_by_the_air_where_no_slab_was_measured() {
    OptionalDouble none = OptionalDouble.empty();
    assertThat(warmer(OptionalDouble.of(20), OptionalDouble.of(26)).maybe()).contains(26.0);
    assertThat(warmer(OptionalDouble.of(20), OptionalDouble.of(14)).maybe()).contains(20.0);
    assertThat(warmer(OptionalDouble.of(20), none).maybe()).contains(20.0);
    assertThat(warmer(none, OptionalDouble.of(26))).isInstanceOf(Figure.Refused.class);
  }
}
