package slabwright.inlay.masking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.EdgeClass;
import slabwright.site.Overspray;
import slabwright.units.Length;

/** Heights of mist on a wall, by the fan's triangle: (reach - distance) / tan(half the angle). */
class UprightFinderTest {
  private static final Region OPENING = Region.rectangle(new Bounds(0, 0, 600, 600));

  private static final double TAN_30 = 1 / Math.sqrt(3);

  private static Overspray.Fan fan(double height, double degrees, double overrun, double drift) {
    return new Overspray.Fan(Length.mm(height), degrees, Length.mm(overrun), Length.mm(drift));
  }

  private static UprightMasking at(double away, Overspray overspray, OptionalDouble height) {
    Line foot = Line.of(new Vec(-away, -500), new Vec(-away, 1_100));
    Region reached = OPENING.offset(overspray.reachMm(), 0.1);
    FloorAround.UprightObstacle wall =
        new FloorAround.UprightObstacle(EdgeClass.WALL.label(), foot, height);
    List<UprightMasking> found =
        new UprightFinder(OPENING, reached, overspray)
            .on(new FloorAround(Region.empty(), List.of(wall)));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static double height(double away, Overspray overspray) {
    return at(away, overspray, OptionalDouble.empty()).height().orElseThrow();
  }

  @Test
  void a_fan_of_60_degrees_falls_away_steeper_than_one_of_90() {
    double reach = 80 + 300 * TAN_30 + 40;
    assertThat(height(200, fan(300, 60, 80, 40))).isCloseTo((reach - 200) / TAN_30, within(0.01));
    assertThat(height(200, fan(300, 90, 80, 40))).isCloseTo(80 + 300 + 40 - 200, within(0.01));
    assertThat(height(200, fan(300, 120, 80, 40)))
        .isCloseTo((80 + 40 - 200) * TAN_30 + 300, within(0.01));
  }

  @Test
  void a_jet_without_an_angle_reaches_as_high_as_its_nozzle_wherever_it_lands() {
    assertThat(height(100, fan(300, 0, 150, 0))).isEqualTo(300);
  }

  @Test
  void nothing_is_masked_higher_than_it_stands() {
    Overspray fan = fan(300, 60, 80, 40);
    assertThat(at(200, fan, OptionalDouble.of(90)).height()).hasValue(90);
    assertThat(at(200, fan, OptionalDouble.of(900)).height().orElseThrow()).isLessThan(300);
  }

  @Test
  void where_only_a_reach_was_stated_what_stands_is_masked_whole() {
    Overspray stated = new Overspray.Stated(Length.mm(450));
    assertThat(at(200, stated, OptionalDouble.of(90)).height()).hasValue(90);
    assertThat(at(200, stated, OptionalDouble.empty()).height()).isEmpty();
  }

  @Test
  void the_nearest_place_of_a_wall_decides_wherever_on_it_that_is() {
    Overspray fan = fan(300, 90, 80, 20);
    Region reached = OPENING.offset(fan.reachMm(), 0.1);
    Line bent = new Line(List.of(new Vec(-390, -60), new Vec(-120, 301), new Vec(-390, 660)));
    List<UprightMasking> found =
        new UprightFinder(OPENING, reached, fan)
            .on(
                new FloorAround(
                    Region.empty(),
                    List.of(
                        new FloorAround.UprightObstacle(
                            EdgeClass.WALL.label(), bent, OptionalDouble.empty()))));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).height().orElseThrow()).isCloseTo(400 - 120, within(0.01));
  }
}
