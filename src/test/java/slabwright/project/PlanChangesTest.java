package slabwright.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slabwright.site.AdviceId;
import slabwright.site.Declined;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Form;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Move;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.edit.AreaEdit;
import slabwright.site.edit.Edit;
import slabwright.site.edit.MarkEdit;
import slabwright.site.edit.OutlineEdit;
import slabwright.site.edit.SiteEdit;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class PlanChangesTest {
  private static final Mark COUNTER =
      Mark.of("m1", "counter", new MarkKind.Island(), box(3000, 2000, 1500));

  private static Form box(double x, double y, double length) {
    return new Form.Rectangle(Spot.mm(x, y), Length.mm(length), Length.mm(600), Length.ZERO, 0);
  }

  private static Site shed() {
    FloorArea area =
        FloorArea.of(
            "a1",
            "Shed",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                OutlinePiece.wall(Spot.mm(8000, 0)),
                OutlinePiece.wall(Spot.mm(8000, 6000)),
                OutlinePiece.wall(Spot.mm(0, 6000))));
    return Site.empty("Tram shed", UnitSystem.METRIC)
        .withAreas(List.of(area.withMarks(List.of(COUNTER))));
  }

  private static List<String> said(Site then, Site now) {
    return PlanChanges.between(then, now).stream().map(Words.english()::line).toList();
  }

  private static List<String> after(Edit edit) {
    return said(shed(), edit.apply(shed()).orThrow());
  }

  @Test
  void a_plan_does_not_differ_from_itself() {
    assertThat(PlanChanges.between(shed(), shed())).isEmpty();
  }

  @Test
  void showing_other_units_changes_nothing() {
    assertThat(after(new SiteEdit.SetUnits(UnitSystem.FEET_INCHES))).isEmpty();
  }

  @Test
  void a_mark_is_added_moved_resized_and_removed() {
    Mark drain = Mark.of("m2", "", new MarkKind.DrainOrBox(), box(1000, 1000, 300));
    assertThat(after(new MarkEdit.Put("a1", drain))).containsExactly("Drain or box m2 added");
    assertThat(after(put(COUNTER.form().map(Move.by(100, 0)))))
        .containsExactly("Island \"counter\" moved");
    assertThat(after(put(box(3000, 2000, 1700))))
        .containsExactly("Island \"counter\" has another size");
    assertThat(after(new MarkEdit.Remove("a1", Set.of("m1"))))
        .containsExactly("Island \"counter\" removed");
  }

  private static Edit put(Form form) {
    return new MarkEdit.Put("a1", COUNTER.withForm(form));
  }

  @Test
  void a_moved_corner_tells_the_walls_that_changed() {
    assertThat(after(new OutlineEdit.MoveCorner("a1", 2, Spot.mm(8000, 6500))))
        .containsExactly(
            "Wall 2 is 6.500 m instead of 6.000 m", "Wall 3 is 8.016 m instead of 8.000 m");
  }

  @Test
  void machines_are_named() {
    Machine m = new Machine("g1", "Planetary", Length.mm(700), Length.mm(650), Length.mm(10));
    assertThat(after(new AreaEdit.SetMachines("a1", List.of(m))))
        .containsExactly("Machine \"Planetary\" added");
  }

  @Test
  void in_a_site_of_several_floor_areas_a_change_names_its_own() {
    FloorArea first = shed().areas().get(0);
    Site two = shed().withAreas(List.of(first, FloorArea.of("a2", "Store", first.outline())));
    assertThat(said(two, new MarkEdit.Remove("a1", Set.of("m1")).apply(two).orThrow()))
        .containsExactly("\"Shed\": island \"counter\" removed");
  }

  private static Site with(Doorway door) {
    return shed().withAreas(List.of(shed().areas().get(0).withDoorways(List.of(door))));
  }

  @Test
  void a_doorway_tells_each_thing_that_changed_of_it() {
    Doorway gate = new Doorway("d1", "Door", 0, Length.mm(1000), Length.mm(900), false);
    Doorway other =
        gate.withName("Gate").at(1, Length.mm(500)).withWidth(Length.mm(1200)).withWayIn(true);
    assertThat(said(with(gate), with(other)))
        .containsExactly(
            "Doorway \"Gate\" is 1.200 m wide instead of 900 mm",
            "Doorway \"Gate\" moved",
            "Doorway \"Gate\" is a way in",
            "Doorway \"Door\" renamed to doorway \"Gate\"");
    assertThat(said(with(gate), shed())).containsExactly("Doorway \"Door\" removed");
  }

  @Test
  void floor_areas_come_and_go() {
    assertThat(after(new SiteEdit.RemoveArea("a1"))).containsExactly("Floor area \"Shed\" removed");
  }

  @Test
  void answers_on_use_and_declined_advice_are_told() {
    FloorUse dry = FloorUse.NOT_ASKED.withWet(Optional.of(false));
    assertThat(after(new AreaEdit.SetUse("a1", dry)))
        .containsExactly("Use of the floor answered otherwise");
    assertThat(after(new AreaEdit.DeclineAdvice("a1", Declined.of(AdviceId.GRIT))))
        .containsExactly(
            "Refusal of the advice \"Put grit into the last coat and measure the wet DCOF.\" added");
  }
}
