package slabwright.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
import slabwright.store.PlanFile;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

/** Small invented sites on disk. */
final class TestSites {
  private TestSites() {}

  private static FloorArea shed() {
    return FloorArea.of(
        "a1",
        "Shed",
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(8000, 0)),
            OutlinePiece.wall(Spot.mm(8000, 6000)),
            OutlinePiece.wall(Spot.mm(0, 6000))));
  }

  /** A shed of 8 by 6 m. */
  static Path shed(Path folder) throws IOException {
    return save(shed(), folder);
  }

  /** The shed with an arrow laid into its floor, 1.2 m wide. */
  static Path withArrow(Path folder) throws IOException {
    arrow(folder, 30);
    Inlay arrow =
        new Inlay(
            "i1",
            "Arrow",
            "arrow.svg",
            "",
            Spot.mm(4000, 3000),
            Length.mm(1200),
            0,
            StencilSpec.forRoll(Length.mm(1220)));
    return save(shed().withInlays(List.of(arrow)), folder);
  }

  /** The shed with a comb of needles laid into its floor, 1.6 m wide: it is cut in two panels. */
  static Path withComb(Path folder) throws IOException {
    StringBuilder teeth = new StringBuilder();
    for (int x = 0; x < 160; x += 40) {
      teeth.append("M%d,200 h30 L%d,20 Z ".formatted(x, x + 15));
    }
    Files.writeString(
        folder.resolve("comb.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 150 220'><path fill='#14505c' d='"
            + teeth
            + "'/></svg>");
    Inlay comb =
        new Inlay(
            "i1",
            "Comb",
            "comb.svg",
            "",
            Spot.mm(4000, 3000),
            Length.mm(1600),
            0,
            StencilSpec.forRoll(Length.mm(1220)));
    return save(shed().withInlays(List.of(comb)), folder);
  }

  /** The shed with a level trench of 2 by 1 m that was drawn by its corners, and a machine. */
  static Path withTrench(Path folder) throws IOException {
    Mark trench =
        Mark.of(
            "m1",
            "pipe trench",
            new MarkKind.Trench(TrenchLevel.FLUSH, false),
            new Form.Polygon(
                List.of(
                    Spot.mm(1000, 1000),
                    Spot.mm(3000, 1000),
                    Spot.mm(3000, 2000),
                    Spot.mm(1000, 2000))));
    Machine machine = new Machine("g1", "grinder", Length.mm(710), Length.mm(660), Length.mm(25));
    return save(shed().withMarks(List.of(trench)).withMachines(List.of(machine)), folder);
  }

  /** Draws the arrow, 20 wide and so many units long. */
  static void arrow(Path folder, int length) throws IOException {
    Files.writeString(
        folder.resolve("arrow.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 20 %d'><path fill='#14505c' d='M0,%d L10,0 L20,%d Z'/></svg>"
            .formatted(length, length, length));
  }

  private static Path save(FloorArea area, Path folder) throws IOException {
    Site site = Site.empty("Tram shed", UnitSystem.METRIC).withAreas(List.of(area));
    Path file = folder.resolve("shed.site.json");
    PlanFile.save(site, file);
    return file;
  }
}
