package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Inlay;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

/** The invented reading hall: a hall with a bay, a trench, a counter and three booths. */
public final class SampleHall {
  private SampleHall() {}

  static Site site() {
    return Site.empty("Tram Hall Library", UnitSystem.FEET_INCHES)
        .withNote("invented")
        .withAreas(List.of(area()));
  }

  public static FloorArea area() {
    FloorArea bare = FloorArea.of("hall", "Reading hall", outline());
    return bare.withDoorways(
            List.of(
                new Doorway("main", "main doors", 0, feet(25), feet(9.333), true),
                new Doorway("back", "back door", 4, feet(6), feet(3), false)))
        .withMachines(
            List.of(
                new Machine(
                    "m29",
                    "29 in machine",
                    Length.inches(31),
                    Length.inches(29),
                    Length.inches(2))))
        .withMarks(marks())
        .withInlays(List.of(inlay()));
  }

  private static List<OutlinePiece> outline() {
    double[][] corners = {
      {0, 0}, {52.5, 0}, {52.5, 15.583}, {47.5, 15.583}, {47.5, 35.583}, {0, 35.583}
    };
    List<OutlinePiece> pieces = new ArrayList<>();
    for (double[] c : corners) {
      pieces.add(OutlinePiece.wall(spot(c[0], c[1])));
    }
    return pieces;
  }

  private static List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    marks.add(
        Mark.of(
            "trench",
            "trench",
            new MarkKind.Trench(TrenchLevel.PROUD, false),
            new Form.Strip(List.of(spot(19.5, 35.583), spot(19.5, 15), spot(34, 15)), feet(2.9))));
    marks.add(
        Mark.of("res", "old adhesive", new MarkKind.Residue("adhesive"), rectangle(7.5, 8, 10, 8)));
    marks.add(
        Mark.of("patch", "patch", new MarkKind.Patch(), new Form.Circle(spot(8, 27), feet(3.5))));
    marks.add(
        Mark.of(
            "counter",
            "counter",
            new MarkKind.Island(),
            new Form.RoundEnded(spot(33, 26.4), feet(14), feet(6.2), 0)));
    for (int i = 0; i < 3; i++) {
      marks.add(
          Mark.of(
              "booth" + i,
              "booth " + (i + 1),
              new MarkKind.Booth(),
              rectangle(45.1, 33 - 4 * i, 4.2, 3)));
    }
    marks.add(
        Mark.of(
            "crack",
            "crack",
            new MarkKind.Crack(Length.mm(3), Length.mm(10)),
            new Form.Trace(List.of(spot(36, 3), spot(38, 7), spot(43, 9)))));
    marks.add(
        Mark.of(
            "joint",
            "sawn joint",
            new MarkKind.Joint(Length.mm(4), Length.mm(25)),
            new Form.Trace(List.of(spot(0, 18), spot(18, 18)))));
    marks.add(place("drain", "floor drain", new MarkKind.DrainOrBox(), 49, 12));
    marks.add(place("power", "32 A", new MarkKind.PowerPoint("32 A"), 46.5, 17));
    marks.add(place("det", "smoke detector", new MarkKind.Detector(), 24, 9));
    marks.add(place("ign", "water heater", new MarkKind.IgnitionSource("pilot flame"), 51, 3));
    return marks;
  }

  private static Mark place(String id, String name, MarkKind kind, double x, double y) {
    return new Mark(id, name, kind, new Form.Place(spot(x, y)), OptionalInt.empty());
  }

  private static Form rectangle(double x, double y, double length, double width) {
    return new Form.Rectangle(spot(x, y), feet(length), feet(width), Length.ZERO, 0);
  }

  static Inlay inlay() {
    return new Inlay(
        "heron",
        "Heron ring",
        "heron-ring.svg",
        "",
        spot(29.7, 7),
        feet(8),
        0,
        StencilSpec.forRoll(Length.inches(48)));
  }

  private static Spot spot(double x, double y) {
    return new Spot(feet(x), feet(y));
  }

  private static Length feet(double feet) {
    return Length.feet(feet);
  }
}
