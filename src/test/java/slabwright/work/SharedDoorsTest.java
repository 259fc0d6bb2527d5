package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.floor.Floors.rectangle;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepMeans;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepSubject;
import slabwright.work.step.StepType;

/** Invented floors: a porch that leads into a hall, and a store behind the hall. */
class SharedDoorsTest {
  private static Doorway door(String id, boolean wayIn, String leadsTo) {
    Optional<Doorway.LeadsTo> to =
        Optional.of(leadsTo)
            .filter(t -> !t.isEmpty())
            .map(t -> new Doorway.LeadsTo(t.split("/", -1)[0], t.split("/", -1)[1]));
    return new Doorway(
        id,
        id,
        0,
        Length.mm(500),
        Length.mm(900),
        wayIn,
        new Doorway.Passage(to, Optional.empty()));
  }

  private static Doorway sealed(Doorway d) {
    return d.withPassage(d.passage().withSealed(true));
  }

  private static FloorArea area(String id, Doorway... doors) {
    return rectangle(8_000, 6_000).withId(id).withName(id).withDoorways(List.of(doors));
  }

  private static SharedDoors doors(FloorArea... areas) {
    return new SharedDoors(
        Site.empty("Tram Hall Library", UnitSystem.METRIC).withAreas(List.of(areas)));
  }

  /** Street, porch, hall, store: each the only way in to the next. */
  private static SharedDoors row() {
    return doors(
        area("porch", door("street", true, ""), door("p", false, "hall/h")),
        area("hall", door("h", true, ""), door("s", false, "")),
        area("store", door("t", true, "hall/s")));
  }

  private static List<String> said(List<DayCheck> checks) {
    return checks.stream()
        .map(c -> c.area() + " " + c.what().key().replace("work.shared-doors.", ""))
        .toList();
  }

  @Test
  void a_doorway_leads_where_either_side_says() {
    SharedDoors row = row();
    FloorArea hall = row.site().area("hall").orElseThrow();
    assertThat(row.behind(hall, hall.doorways().get(0))).contains("porch");
    assertThat(row.behind(hall, hall.doorways().get(1))).contains("store");
    FloorArea porch = row.site().area("porch").orElseThrow();
    assertThat(row.behind(porch, porch.doorways().get(0))).isEmpty();
    assertThat(row.behind(porch, porch.doorways().get(1))).contains("hall");
  }

  @Test
  void of_several_floors_a_doorway_that_leads_nowhere_is_said_unless_it_is_sealed() {
    assertThat(said(row().unsaid())).containsExactly("porch unsaid");
    assertThat(doors(area("hall", door("h", true, ""))).unsaid()).isEmpty();
    assertThat(doors(area("hall", sealed(door("h", false, ""))), area("store")).unsaid()).isEmpty();
  }

  @Test
  void a_sealed_doorway_is_said_with_both_floors_where_they_are_known() {
    assertThat(
            said(
                doors(
                        area("hall", sealed(door("h", false, "store/t"))),
                        area("store", sealed(door("yard", false, ""))))
                    .sealed()))
        .containsExactly("hall sealed", "store sealed-alone");
  }

  @Test
  void a_floor_that_is_the_only_way_in_to_another_is_coated_last() {
    assertThat(said(row().order(List.of()))).containsExactly("porch last", "hall last");
    assertThat(
            said(
                row()
                    .order(
                        List.of(
                            new HeldStep(
                                "store", "x", Said.text("x"), List.of(), OptionalDouble.empty())))))
        .containsExactly("porch last", "hall held-behind");
  }

  @Test
  void a_floor_with_another_way_in_waits_for_nobody() {
    SharedDoors two =
        doors(
            area("hall", door("h", true, ""), door("s", false, "store/t")),
            area("store", door("t", true, ""), door("yard", true, "")));
    assertThat(two.order(List.of())).isEmpty();
  }

  @Test
  void floors_that_are_reached_only_through_each_other_are_told() {
    SharedDoors circle =
        doors(area("a", door("x", true, "b/y")), area("b", door("y", true, "a/x")));
    assertThat(said(circle.order(List.of()))).containsExactly("a circle", "b circle");
  }

  private static WorkStep step(String area, StepKind kind, String... after) {
    StepType type =
        kind == StepKind.COAT
            ? StepType.coat(area, new CoatNumber(0, 1), AirEffect.NONE)
            : new StepType(
                area,
                StepSubject.of(kind, StepPlace.WHOLE_FLOOR),
                StepMeans.HAND,
                Optional.empty(),
                List.of(),
                Set.of(),
                AirEffect.NONE);
    List<StepWait> waits = Stream.of(after).map(StepWait::straightAfter).toList();
    return new WorkStep(
        area + "." + kind,
        Said.text(area),
        area,
        type,
        Duration.ofHours(1),
        1,
        true,
        waits,
        Optional.empty(),
        Optional.empty());
  }

  /** Its grinding may come before; from its cleaning on it waits for the last of those behind. */
  @Test
  void a_way_in_is_cleaned_and_coated_after_all_behind_it() {
    List<WorkStep> steps = new ArrayList<>();
    for (String area : List.of("porch", "hall", "store")) {
      steps.add(step(area, StepKind.FINE_PASS));
      steps.add(step(area, StepKind.CLEAN, area + ".FINE_PASS"));
      steps.add(step(area, StepKind.COAT, area + ".CLEAN"));
    }
    List<WorkStep> all = row().ordered(steps);
    assertThat(all)
        .extracting(WorkStep::id)
        .containsExactly(
            "store.FINE_PASS",
            "store.CLEAN",
            "store.COAT",
            "hall.FINE_PASS",
            "hall.CLEAN",
            "hall.COAT",
            "porch.FINE_PASS",
            "porch.CLEAN",
            "porch.COAT");
    assertThat(all.get(3).waits()).isEmpty();
    assertThat(all.get(4).waits())
        .extracting(StepWait::after)
        .containsExactly("hall.FINE_PASS", "store.COAT");
    assertThat(all.get(5).waits()).extracting(StepWait::after).containsExactly("hall.CLEAN");
    assertThat(all.get(7).waits())
        .extracting(StepWait::after)
        .containsExactly("porch.FINE_PASS", "hall.COAT");
  }
}
