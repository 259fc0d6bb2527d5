package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.Site;
import slabwright.work.AreaWorkPlan;
import slabwright.work.FanShortage;
import slabwright.work.Said;
import slabwright.work.SolventPlaces;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.book.BookSamples;

/** The tram hall's load list beside what its fire plan, check lists and plan of the air ask for. */
class SolventGearTest {
  private static final Site SITE = WorkSamples.tramHall();
  private static final WorkPlan PLAN = WorkSamples.planSmall(SITE, BookSamples.book());

  private static List<String> lines(WorkPlan plan) {
    return LoadList.of(plan).text(Said::of).lines().toList();
  }

  /** Yard door and main doors of the hall, and the terrace's way in from the street. */
  @Test
  void an_extinguisher_is_loaded_for_each_way_out_that_the_fire_plan_marks() {
    assertThat(lines(PLAN))
        .anyMatch(
            l -> l.startsWith("[ ] Fire extinguishers for flammable liquids, one a way out: 3;"));
  }

  @Test
  void hoses_of_the_meter_reach_from_the_way_in_to_each_place_it_is_held_at() {
    String hoses =
        lines(PLAN).stream()
            .filter(l -> l.startsWith("[ ] Hoses for the meter"))
            .findFirst()
            .orElseThrow();
    AreaWorkPlan hall = PLAN.area("reading-hall").orElseThrow();
    List<Vec> points =
        SolventPlaces.of(
                hall.floor().area(),
                hall.floor().floor(),
                hall.air().maybe().orElseThrow(),
                SITE.units())
            .meterPoints();
    List<Double> feet =
        Pattern.compile("M\\d ([0-9.]+) ft")
            .matcher(hoses.substring(0, hoses.indexOf("; Terrace M1")))
            .results()
            .map(r -> Double.valueOf(r.group(1)))
            .toList();
    assertThat(feet).hasSameSizeAs(points).hasSizeGreaterThan(1);
    for (int i = 0; i < feet.size(); i++) {
      double straight = points.get(i).distanceTo(hall.floor().wayOut().orElseThrow()) / 304.8;
      assertThat(feet.get(i)).isBetween(straight, straight + 1);
    }
  }

  @Test
  void what_the_check_lists_ask_for_is_loaded() {
    assertThat(lines(PLAN))
        .contains(
            "[ ] Locks and tags for the board, tag for the gas valve",
            "[ ] Grounding straps for peeling film")
        .anyMatch(l -> l.startsWith("[ ] Roller frames, poles, trays: "));
  }

  /** 2001 cfm are asked for and one fan moves 1800: one more moves more than what is missing. */
  @Test
  void fans_that_move_less_than_the_plan_asks_for_are_said_with_how_many_more_it_takes() {
    FanShortage shortage = FanShortage.of(PLAN).orElseThrow();
    assertThat(shortage.more()).isEqualTo(1);
    assertThat(lines(PLAN))
        .contains(
            "[ ] TOO LITTLE AIR: 2,001 cfm by the plan, the fans here move 1,800 cfm: one more,"
                + " with duct");
    WorkPlan weak = planWithFan("600 cfm");
    assertThat(FanShortage.of(weak).orElseThrow().more()).isEqualTo(3);
    assertThat(FanShortage.of(planWithFan("2100 cfm"))).isEmpty();
    assertThat(lines(planWithFan("2100 cfm"))).noneMatch(l -> l.contains("TOO LITTLE AIR"));
  }

  private static WorkPlan planWithFan(String airflow) {
    return WorkSamples.planSmall(
        SITE, WorkSamples.bookWith("tool", "fan and duct 12", "airflow", airflow));
  }
}
