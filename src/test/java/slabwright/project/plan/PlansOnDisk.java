package slabwright.project.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.store.GraphicFiles;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

/** A small invented shed, with and without a ring laid into its floor. */
final class PlansOnDisk {
  static final String GRAPHIC = "ring.svg";

  private PlansOnDisk() {}

  static FloorArea area() {
    return FloorArea.of(
        "a1",
        "Shed",
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(4000, 0)),
            OutlinePiece.wall(Spot.mm(4000, 3000)),
            OutlinePiece.wall(Spot.mm(0, 3000))));
  }

  static Site shed() {
    return Site.empty("Shed", UnitSystem.METRIC).withAreas(List.of(area()));
  }

  /** The shed with a ring, whose graphic is written into the folder; never accepted. */
  static Site withRing(Path folder) throws IOException {
    draw(folder, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\"/>");
    Inlay ring =
        new Inlay(
            "i1",
            "Ring",
            GRAPHIC,
            "",
            Spot.mm(2000, 1500),
            Length.mm(900),
            0,
            StencilSpec.forRoll(Length.mm(1220)));
    return shed().withAreas(List.of(area().withInlays(List.of(ring))));
  }

  static void draw(Path folder, String svg) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(GRAPHIC), svg);
  }

  static Inlay ring(Site site) {
    return site.areas().get(0).inlays().get(0);
  }

  static String hash(Path folder) throws IOException {
    return GraphicFiles.hash(folder.resolve(GRAPHIC));
  }
}
