package slabwright.store;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import slabwright.shape.Affine;
import slabwright.site.AdviceId;
import slabwright.site.AirSpace;
import slabwright.site.ColourChoice;
import slabwright.site.Declined;
import slabwright.site.Doorway;
import slabwright.site.Exposure;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Form;
import slabwright.site.HandSeams;
import slabwright.site.Inlay;
import slabwright.site.LocalBlank;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.MoistureReading;
import slabwright.site.OutlinePiece;
import slabwright.site.Overspray;
import slabwright.site.PieceKind;
import slabwright.site.Release;
import slabwright.site.Setting;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.site.Spot;
import slabwright.site.StencilChanges;
import slabwright.site.StencilSpec;
import slabwright.site.TrenchLevel;
import slabwright.site.Underlay;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

/** A site that uses every field of the plan file at least once. */
public final class FullSite {
  private FullSite() {}

  private static Length len(String text) {
    return Length.parse(text).orThrow();
  }

  public static Site make() {
    TreeMap<String, String> graphics = new TreeMap<>();
    graphics.put("a.svg", "00ff");
    return new Site(
        "Full",
        "invented",
        UnitSystem.FEET_INCHES,
        Optional.of(LocalDateTime.of(2026, 12, 7, 7, 30)),
        List.of(area(), yard()),
        Optional.of(new Underlay("photo.png", new Affine(2, 0, 0, -2, 5, 6), "walls lean away")),
        List.of(new Release(1, LocalDate.of(2026, 12, 1), "first", graphics)),
        FullDetails.job());
  }

  private static FloorArea area() {
    return new FloorArea(
        "hall",
        "Hall",
        Setting.OUTDOOR,
        List.of(
            OutlinePiece.wall(new Spot(len("0 mm"), Length.ZERO)),
            new OutlinePiece(Spot.mm(10_000, 0), PieceKind.KERB, Length.mm(200)),
            new OutlinePiece(Spot.mm(10_000, 8000), PieceKind.OPEN_EDGE, Length.ZERO),
            OutlinePiece.wall(Spot.mm(0, 8000))),
        List.of(
            new Doorway(
                "d",
                "door",
                0,
                len("3' 2\""),
                Length.mm(900),
                true,
                new Doorway.Passage(
                    Optional.of(new Doorway.LeadsTo("yard", "gate")), Optional.of(len("34\""))))),
        List.of(
            new Machine(
                "m",
                "grinder",
                len("29\""),
                len("27\""),
                len("2\""),
                new Machine.Travel(Optional.of(len("5'")), Optional.of(len("1 1/2\""))))),
        marks(),
        List.of(inlay(), plainInlay()),
        new Slab(
            OptionalDouble.of(5.5),
            OptionalDouble.of(30),
            Optional.of(len("6\"")),
            List.of(new MoistureReading(MoistureReading.Test.F1869, 3.5, "middle")),
            OptionalDouble.of(12),
            OptionalDouble.of(14),
            OptionalDouble.of(60),
            Optional.of(false)),
        new AirSpace(Optional.of(len("12'")), 1200, 3),
        new Finish(
            Optional.of(Exposure.FINE),
            List.of(new Finish.Coat("sealer", 2, Finish.Target.WHOLE_FLOOR))),
        new FloorUse(Optional.of(true), Optional.of(false), Optional.of(true)),
        List.of(
            new Declined(AdviceId.GRIT, "K. R.", Optional.of(LocalDate.of(2026, 11, 20))),
            Declined.of(AdviceId.MOISTURE_TEST)),
        FullDetails.area());
  }

  private static FloorArea yard() {
    return FloorArea.of(
            "yard",
            "Yard",
            List.of(
                OutlinePiece.wall(Spot.mm(0, -9000)),
                OutlinePiece.wall(Spot.mm(9000, -9000)),
                OutlinePiece.wall(Spot.mm(9000, -1000)),
                OutlinePiece.wall(Spot.mm(0, -1000))))
        .withDoorways(
            List.of(
                new Doorway("gate", "gate", 2, Length.mm(900), Length.mm(900), false),
                new Doorway("hatch", "hatch", 0, Length.mm(900), Length.mm(900), false)
                    .withPassage(Doorway.Passage.UNKNOWN.withSealed(true))));
  }

  private static List<Mark> marks() {
    Spot p = Spot.mm(4000, 4000);
    Length one = Length.mm(100);
    Form trace = new Form.Trace(List.of(p, Spot.mm(5000, 4000)));
    Form place = new Form.Place(p);
    Form polygon = new Form.Polygon(List.of(p, Spot.mm(5000, 4000), Spot.mm(4500, 5000)));
    Form curved =
        new Form.Curved(
            List.of(
                new Form.CurvedCorner(p, Length.ZERO),
                new Form.CurvedCorner(Spot.mm(5000, 4000), Length.mm(300))));
    List<Mark> marks = new ArrayList<>();
    add(
        marks,
        new MarkKind.Trench(TrenchLevel.LOW, true, Optional.of(len("3/4\""))),
        new Form.Strip(List.of(p, Spot.mm(6000, 4000)), one));
    add(marks, new MarkKind.Patch(), curved);
    add(marks, new MarkKind.Residue("glue"), polygon);
    add(marks, new MarkKind.Island(), new Form.RoundEnded(p, Length.mm(900), one, 10));
    add(marks, new MarkKind.Booth(), new Form.Rectangle(p, one, one, Length.mm(5), 30));
    add(marks, new MarkKind.Column(), new Form.Circle(p, one));
    add(marks, new MarkKind.TopOrStep(one, 3), polygon);
    add(marks, new MarkKind.Joint(one, one), trace);
    add(marks, new MarkKind.Crack(one, one), trace);
    add(marks, new MarkKind.Spall(one), polygon);
    add(marks, new MarkKind.DrainOrBox(), place);
    add(marks, new MarkKind.LevelChange(one), trace);
    add(marks, new MarkKind.MaskedTrim(one), trace);
    add(marks, new MarkKind.PowerPoint("16 A"), place);
    add(marks, new MarkKind.Detector(), place);
    add(marks, new MarkKind.IgnitionSource("pilot light"), place);
    add(marks, new MarkKind.AirOutlet(), place);
    return marks;
  }

  private static void add(List<Mark> marks, MarkKind kind, Form form) {
    OptionalInt follows = marks.isEmpty() ? OptionalInt.of(2) : OptionalInt.empty();
    marks.add(new Mark("m" + marks.size(), kind.type().word(), kind, form, follows));
  }

  private static Inlay inlay() {
    StencilSpec spec =
        new StencilSpec(
            len("48\""),
            Optional.of(len("46\"")),
            len("1/2\""),
            len("4\""),
            len("2\""),
            new Overspray.Fan(len("10\""), 80, len("6\""), len("4\"")),
            List.of(new ColourChoice("#14505c", ColourChoice.Use.LEAVE, "dye-1", "petrol")),
            2.5,
            Length.mm(1),
            Optional.of(len("10'")),
            len("1/8\""),
            true,
            changes());
    return new Inlay(
        "i",
        "inlay",
        "a.svg",
        "00ff",
        Spot.mm(4000, 2000),
        len("8'"),
        90,
        spec,
        FullDetails.source());
  }

  private static StencilChanges changes() {
    return new StencilChanges(
        Optional.of(len("3 mm")),
        OptionalDouble.of(20),
        OptionalDouble.of(200),
        Optional.of(len("1 mm")),
        Optional.of(len("1/4\"")),
        OptionalDouble.of(61.5),
        Optional.of(new HandSeams(HandSeams.Strips.ACROSS, List.of(len("30\""), len("1500 mm")))),
        List.of(new LocalBlank("#14505c", Spot.mm(10, 20), len("2'"), len("300 mm"))));
  }

  private static Inlay plainInlay() {
    StencilSpec spec = StencilSpec.forRoll(len("610 mm"));
    return new Inlay("j", "", "b.svg", "", Spot.mm(4000, 6000), len("1 m"), 0, spec);
  }
}
