package slabwright.site.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Move;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

class EditTest {
  private static final Message STEP = new Message("site.trial", List.of());

  private static Site square() {
    FloorArea area =
        FloorArea.of(
            "a",
            "A",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                OutlinePiece.wall(Spot.mm(9000, 0)),
                OutlinePiece.wall(Spot.mm(9000, 6000)),
                OutlinePiece.wall(Spot.mm(0, 6000))));
    return Site.empty("S", UnitSystem.METRIC).withAreas(List.of(area));
  }

  private static Mark patch(String id, double x, double y) {
    return Mark.of(id, id, new MarkKind.Patch(), new Form.Circle(Spot.mm(x, y), Length.mm(300)));
  }

  private static Site done(Result<Site> outcome) {
    return outcome.orThrow();
  }

  @Test
  void a_corner_that_would_make_the_outline_cross_itself_is_refused_with_the_place() {
    Result<Site> o = new OutlineEdit.MoveCorner("a", 0, Spot.mm(12_000, 3000)).apply(square());
    assertThat(o).isInstanceOf(Result.Refused.class);
    Refusal why = ((Result.Refused<Site>) o).refusals().get(0);
    assertThat(why.message().key()).isEqualTo("site.outline-rules.the-outline-of-crosses-or");
    assertThat(why.where()).isPresent();
  }

  @Test
  void a_mark_outside_is_refused_and_a_mark_over_the_wall_is_not() {
    assertThat(new MarkEdit.Put("a", patch("m", 20_000, 0)).apply(square()).isOk()).isFalse();
    assertThat(new MarkEdit.Put("a", patch("m", 9000, 0)).apply(square()).isOk()).isTrue();
  }

  @Test
  void an_edit_of_what_is_gone_is_refused() {
    assertThat(new MarkEdit.Remove("a", Set.of("m")).apply(square()).isOk()).isFalse();
    assertThat(new AreaEdit.Rename("b", "B").apply(square()).isOk()).isFalse();
  }

  @Test
  void a_floor_area_moves_with_all_that_is_on_it() {
    Site before = done(new MarkEdit.Put("a", patch("m", 1000, 2000)).apply(square()));
    Site after = done(new AreaEdit.Shift("a", new slabwright.shape.Vec(500, -700)).apply(before));
    FloorArea a = after.area("a").orElseThrow();
    assertThat(a.outline().get(2).from()).isEqualTo(Spot.mm(9500, 5300));
    assertThat(a.mark("m").orElseThrow().form().spots()).containsExactly(Spot.mm(1500, 1300));
    assertThat(done(new AreaEdit.Shift("a", new slabwright.shape.Vec(-500, 700)).apply(after)))
        .isEqualTo(before);
  }

  @Test
  void a_mark_that_follows_a_wall_keeps_its_distance_when_the_wall_moves() {
    Mark m =
        new Mark(
            "m",
            "m",
            new MarkKind.Patch(),
            new Form.Circle(Spot.mm(8000, 3000), Length.mm(200)),
            OptionalInt.of(1));
    Site s = done(new MarkEdit.Put("a", m).apply(square()));
    FloorArea a = s.areas().get(0);
    List<OutlinePiece> wider =
        List.of(
            a.outline().get(0),
            OutlinePiece.wall(Spot.mm(9500, 0)),
            OutlinePiece.wall(Spot.mm(9500, 6000)),
            a.outline().get(3));
    Site next = done(new OutlineEdit.SetOutline("a", wider).apply(s));
    Form.Circle moved = (Form.Circle) next.areas().get(0).marks().get(0).form();
    assertThat(moved.middle().vec().x()).isCloseTo(8500, within(1e-6));
    assertThat(moved.middle().vec().y()).isCloseTo(3000, within(1e-6));
  }

  @Test
  void a_doorway_stays_where_it_is_when_a_corner_is_added_before_it() {
    Doorway d = new Doorway("d", "d", 0, Length.mm(5000), Length.mm(1000), true);
    Site s = done(new OutlineEdit.PutDoorway("a", d).apply(square()));
    Site next = done(new OutlineEdit.AddCorner("a", 0, Spot.mm(4000, -10)).apply(s));
    Doorway after = next.areas().get(0).doorways().get(0);
    assertThat(after.piece()).isEqualTo(1);
    assertThat(
            OutlineShape.of(next.areas().get(0).outline(), 0.5).doorway(after).points().get(0).x())
        .isCloseTo(5000, within(0.1));
  }

  @Test
  void a_doorway_longer_than_its_wall_is_refused() {
    Doorway d = new Doorway("d", "d", 0, Length.mm(8500), Length.mm(1000), true);
    assertThat(new OutlineEdit.PutDoorway("a", d).apply(square()).isOk()).isFalse();
  }

  /** Invariant: undo all gives the first site, bit for bit; redo all the last. */
  @Property(tries = 200)
  void undo_all_gives_the_first_site_and_redo_all_the_last(@ForAll Random random) {
    Site first = square();
    History h = History.of(first);
    for (int i = 0; i < 12; i++) {
      if (randomEdit(random, i).apply(h.now()) instanceof Result.Ok<Site> done) {
        h = h.push(STEP, done.value());
      }
    }
    Site last = h.now();
    History back = h;
    while (back.canUndo()) {
      back = back.undo();
    }
    assertThat(back.now()).isEqualTo(first);
    while (back.canRedo()) {
      back = back.redo();
    }
    assertThat(back.now()).isEqualTo(last);
  }

  private static Edit randomEdit(Random r, int i) {
    return switch (r.nextInt(6)) {
      case 0 ->
          new MarkEdit.Put("a", patch("m" + i, r.nextDouble() * 12_000, r.nextDouble() * 8000));
      case 1 -> new MarkEdit.Remove("a", Set.of("m" + r.nextInt(12)));
      case 2 ->
          new OutlineEdit.MoveCorner(
              "a", r.nextInt(4), Spot.mm(r.nextDouble() * 9000, r.nextDouble() * 6000));
      case 3 ->
          new MarkEdit.MoveAll(
              "a",
              Set.of("m" + r.nextInt(12)),
              Move.turnAbout(Spot.mm(1, 2).vec(), r.nextDouble() * 360));
      case 4 ->
          new OutlineEdit.AddCorner(
              "a", r.nextInt(4), Spot.mm(r.nextDouble() * 9000, r.nextDouble() * 6000));
      default ->
          new SiteEdit.SetUnits(r.nextBoolean() ? UnitSystem.METRIC : UnitSystem.FEET_INCHES);
    };
  }

  @Test
  void saved_means_a_position_and_is_lost_when_it_was_undone_and_overwritten() {
    History h = History.of(square()).push(STEP, square().withName("1")).markSaved();
    assertThat(h.isSaved()).isTrue();
    assertThat(h.undo().isSaved()).isFalse();
    assertThat(h.undo().redo().isSaved()).isTrue();
    assertThat(h.undo().push(STEP, square().withName("2")).isSaved()).isFalse();
  }
}
