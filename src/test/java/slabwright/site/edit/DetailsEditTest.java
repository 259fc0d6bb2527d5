package slabwright.site.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.AreaDetails;
import slabwright.site.ClientPhoto;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.JobDetails;
import slabwright.site.MarkKind;
import slabwright.site.Move;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.site.job.Party;
import slabwright.site.job.PinnedPhoto;
import slabwright.site.job.Stop;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

class DetailsEditTest {
  private static final Message STEP = new Message("site.trial", List.of());

  private static FloorArea square(String id, double x) {
    return FloorArea.of(
        id,
        id,
        List.of(
            OutlinePiece.wall(Spot.mm(x, 0)),
            OutlinePiece.wall(Spot.mm(x + 5000, 0)),
            OutlinePiece.wall(Spot.mm(x + 5000, 5000)),
            OutlinePiece.wall(Spot.mm(x, 5000))));
  }

  private static Doorway door(String id, int wall, String area, String doorway) {
    return new Doorway(id, id, wall, Length.mm(1000), Length.mm(900), false)
        .withPassage(
            new Doorway.Passage(
                Optional.of(new Doorway.LeadsTo(area, doorway)), Optional.of(Length.mm(800))));
  }

  private static Site site() {
    return Site.empty("S", UnitSystem.METRIC)
        .withAreas(
            List.of(
                square("a", 0).withDoorways(List.of(door("d", 1, "b", "e"))),
                square("b", 5000).withDoorways(List.of(door("e", 3, "a", "d")))));
  }

  private static Site done(Edit edit, Site site) {
    return edit.apply(site).orThrow();
  }

  @Test
  void details_of_an_area_are_set() {
    AreaDetails details =
        AreaDetails.NONE.withStops(List.of(new Stop(Stop.Kind.ASBESTOS, new Stop.Open())));
    Site next = done(new AreaEdit.SetDetails("a", STEP, details), site());
    assertThat(next.area("a").orElseThrow().details()).isEqualTo(details);
  }

  @Test
  void details_of_the_job_are_set() {
    JobDetails job = JobDetails.NONE.withClient(new Party("Museum", "", "", "", ""));
    assertThat(done(new SiteEdit.SetJob(STEP, job), site()).job()).isEqualTo(job);
  }

  @Test
  void details_with_a_fault_are_refused() {
    JobDetails job = JobDetails.NONE.withShopBook("../book.json");
    assertThat(new SiteEdit.SetJob(STEP, job).apply(site()))
        .isInstanceOfSatisfying(
            Result.Refused.class,
            r -> assertThat(r.message().key()).isEqualTo("site.file-rules.shop-book-lies-outside"));
  }

  @Test
  void a_doorway_that_another_leads_to_is_not_taken_away() {
    assertThat(new OutlineEdit.RemoveDoorway("b", "e").apply(site()))
        .isInstanceOfSatisfying(
            Result.Refused.class,
            r ->
                assertThat(r.message().key())
                    .isEqualTo("site.job-rules.leads-to-doorway-of-floor"));
  }

  @Test
  void a_removed_area_leaves_no_doorway_that_leads_to_it() {
    Doorway left =
        done(new SiteEdit.RemoveArea("b"), site()).area("a").orElseThrow().doorways().get(0);
    assertThat(left.passage())
        .isEqualTo(new Doorway.Passage(Optional.empty(), Optional.of(Length.mm(800))));
  }

  @Test
  void lines_that_divide_coats_move_with_their_area() {
    AreaDetails.CoatDivision line =
        new AreaDetails.CoatDivision("", List.of(Spot.mm(0, 1000), Spot.mm(5000, 1000)));
    Site with =
        done(
            new AreaEdit.SetDetails("a", STEP, AreaDetails.NONE.withCoatDivisions(List.of(line))),
            site());
    Site moved = done(new AreaEdit.Shift("a", new Vec(10, 20)), with);
    assertThat(moved.area("a").orElseThrow().details().coatDivisions().get(0).line())
        .extracting(Spot::vec)
        .containsExactly(new Vec(10, 1020), new Vec(5010, 1020));
  }

  @Test
  void a_split_wall_keeps_what_is_known_of_its_doorway() {
    Site next = done(new OutlineEdit.AddCorner("a", 1, Spot.mm(5000, 500)), site());
    assertThat(next.area("a").orElseThrow().doorways().get(0).passage())
        .isEqualTo(site().area("a").orElseThrow().doorways().get(0).passage());
  }

  @Test
  void a_depth_does_not_become_a_height() {
    MarkKind.Trench low = new MarkKind.Trench(TrenchLevel.LOW, false, Optional.of(Length.mm(12)));
    assertThat(low.withLevelled(true).off()).contains(Length.mm(12));
    assertThat(low.withLie(TrenchLevel.PROUD).off()).isEmpty();
  }

  @Test
  void photos_stay_with_their_corners_when_one_is_added_or_taken_away() {
    JobDetails job =
        JobDetails.NONE.withPhotos(
            List.of(
                new PinnedPhoto(
                    "a.jpg",
                    "a",
                    new PinnedPhoto.OnCorner(2),
                    Optional.empty(),
                    "",
                    Optional.empty())));
    Site with = done(new SiteEdit.SetJob(STEP, job), site());
    Site added = done(new OutlineEdit.AddCorner("a", 1, Spot.mm(5000, 500)), with);
    assertThat(added.job().photos().get(0).pin()).isEqualTo(new PinnedPhoto.OnCorner(3));
    Site back = done(new OutlineEdit.RemoveCorner("a", 2), added);
    assertThat(back.job().photos()).isEqualTo(job.photos());
  }

  @Test
  void a_turned_floor_takes_its_graphics_and_the_clients_photo_along() {
    List<ClientPhoto.FloorPoint> points =
        List.of(point(1000, 1000), point(4000, 1000), point(4000, 3000), point(1000, 3000));
    JobDetails job =
        JobDetails.NONE.withClientPhoto(
            Optional.of(new ClientPhoto("hall.jpg", points, List.of())));
    Site with = done(new SiteEdit.SetJob(STEP, job), site());
    Site turned = done(new AreaEdit.Shift("a", Move.turnAbout(Vec.ZERO, 90)), with);
    assertThat(
            turned
                .job()
                .clientPhoto()
                .orElseThrow()
                .points()
                .get(1)
                .floor()
                .vec()
                .distanceTo(new Vec(-1000, 4000)))
        .isLessThan(1e-6);
    assertThat(done(new AreaEdit.Shift("b", new Vec(500, 0)), with).job()).isEqualTo(job);
  }

  private static ClientPhoto.FloorPoint point(double x, double y) {
    return new ClientPhoto.FloorPoint(new Vec(x, y), Spot.mm(x, y));
  }
}
