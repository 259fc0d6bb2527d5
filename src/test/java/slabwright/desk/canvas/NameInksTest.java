package slabwright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.FloorPictureMaker;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

class NameInksTest {
  /** Site millimetres to one of paper: the room is 80 mm wide on the screen. */
  private static final double MM = 100;

  private static Mark box(String name, double x, double y, double length, double width) {
    Form form =
        new Form.Rectangle(Spot.mm(x, y), Length.mm(length), Length.mm(width), Length.ZERO, 0);
    return Mark.of(name, name, new MarkKind.Island(), form);
  }

  private static FloorArea room(Mark... marks) {
    return FloorArea.of(
            "a1",
            "Shed",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                OutlinePiece.wall(Spot.mm(8000, 0)),
                OutlinePiece.wall(Spot.mm(8000, 6000)),
                OutlinePiece.wall(Spot.mm(0, 6000))))
        .withMarks(List.of(marks));
  }

  private static List<Text> names(FloorArea area, List<PlanItem> picked, List<Vec> handles) {
    FloorPicture picture = new FloorPictureMaker().apply(area);
    NameInks.Wanted wanted = new NameInks.Wanted(picture, MM, true, 0, picked, handles);
    List<Text> names = new ArrayList<>();
    new NameInks()
        .of(wanted, () -> NameInks.Taken.NOTHING)
        .forEach(
            ink -> {
              if (ink instanceof Text t) {
                names.add(t);
              }
            });
    return names;
  }

  private static Text name(List<Text> all, String words) {
    return all.stream().filter(t -> t.words().equals(words)).findFirst().orElseThrow();
  }

  /** The box of the words, mm on the site. */
  private static Bounds box(Text t) {
    double half = TextMeasure.width(t.words(), t.style()) / 2 * MM;
    double high = TextMeasure.CAP_HEIGHT * t.style().size() * MM;
    return new Bounds(t.at().x() - half, t.at().y(), t.at().x() + half, t.at().y() + high);
  }

  @Test
  void the_name_of_what_is_picked_lies_on_none_of_its_handles() {
    FloorArea area = room(box("long bench", 4000, 3000, 3000, 1200));
    Vec middle = new Vec(4000, 3000);
    Text before = name(names(area, List.of(), List.of()), "long bench");
    assertThat(box(before).contains(middle)).isTrue();
    List<Vec> handles = List.of(middle, new Vec(2500, 2400), new Vec(5500, 3600));
    Text picked =
        name(names(area, List.of(new PlanItem.OfMark("long bench")), handles), "long bench");
    assertThat(handles).noneMatch(h -> box(picked).grown(MM).contains(h));
    assertThat(picked.at().distanceTo(middle)).isLessThan(16 * MM);
  }

  @Test
  void a_name_that_has_no_room_inside_when_picked_stays_beside_its_own_mark() {
    Form trench =
        new Form.Strip(
            List.of(Spot.mm(2000, 5500), Spot.mm(2000, 1000), Spot.mm(6500, 1000)), Length.mm(300));
    Mark mark = Mark.of("t", "drain trench", new MarkKind.Column(), trench);
    FloorArea area = room(mark);
    FloorPicture picture = new FloorPictureMaker().apply(area);
    PlanItem pick = new PlanItem.OfMark("t");
    Vec middle = picture.thing(pick).orElseThrow().middle();
    Text name = name(names(area, List.of(pick), List.of(middle)), "drain trench");
    assertThat(box(name).grown(MM).contains(middle)).isFalse();
    assertThat(name.at().distanceTo(middle)).isLessThan(17 * MM);
  }

  @Test
  void a_name_leaves_a_graphic_free_where_there_is_room_beside() {
    Inlay ring =
        new Inlay(
            "ring",
            "ring",
            "heron.svg",
            "",
            Spot.mm(4000, 2000),
            Length.mm(1600),
            0,
            StencilSpec.forRoll(Length.mm(1220)));
    Form place = new Form.Circle(Spot.mm(4000, 3100), Length.mm(150));
    Mark post = Mark.of("post", "smoke detector", new MarkKind.Column(), place);
    Bounds graphic = new Bounds(3200, 1200, 4800, 2800);
    Text alone = name(names(room(post), List.of(), List.of()), "smoke detector");
    assertThat(box(alone).meets(graphic)).as("it would lie below").isTrue();
    FloorArea with = room(post).withInlays(List.of(ring));
    Text beside = name(names(with, List.of(), List.of()), "smoke detector");
    assertThat(box(beside).meets(graphic)).isFalse();
  }

  @Test
  void a_name_lies_on_no_corner_letter() {
    FloorArea area = room(box("glue", 400, 700, 700, 300));
    FloorPicture picture = new FloorPictureMaker().apply(area);
    Text glue = name(names(area, List.of(), List.of()), "glue");
    assertThat(CornerLetters.boxes(picture, MM)).noneMatch(box(glue)::meets);
  }
}
