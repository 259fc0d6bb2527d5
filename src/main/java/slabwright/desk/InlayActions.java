package slabwright.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.desk.model.edit.NewIds;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.inlay.artwork.picture.PngPixels;
import slabwright.project.SiblingFiles;
import slabwright.shape.Bounds;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.site.edit.AreaEdit;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/** Lays a graphic into the floor: copied beside the plan, never over another file. */
final class InlayActions {
  private final DeskContext bench;
  private final DeskModel parts;
  private final Chooser chooser;

  InlayActions(DeskModel parts, Chooser chooser) {
    this.bench = parts.bench();
    this.parts = parts;
    this.chooser = chooser;
  }

  void choose() {
    chooser.graphic().ifPresent(this::add);
  }

  /** Places a graphic in the middle of the floor, a third of it wide. */
  void add(Path svg) {
    Optional<FloorPicture> floor = parts.pictures().picture();
    if (bench.focus().areaOf(bench.desk().site()).isEmpty() || floor.isEmpty()) {
      noFloor();
      return;
    }
    run(folder -> SiblingFiles.copyInto(svg, folder), floor.get());
  }

  private void run(Copying copying, FloorPicture floor) {
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                Message.of("desk.app.inlay.copying"),
                why -> Message.of("desk.app.inlay.not-copied", why),
                steps -> Result.ok(lay(copying, floor)),
                this::place));
  }

  /** Puts a file into the plan's folder; gives its name there. */
  private interface Copying {
    String into(Path folder) throws IOException;
  }

  /**
   * Places a picture or a file from the system's clipboard.
   *
   * @return whether there was one and the Inlay stage is open to take it
   */
  boolean paste() {
    Clipboard board = Clipboard.getSystemClipboard();
    Optional<FloorPicture> floor = parts.pictures().picture();
    if (bench.focus().stage() != Stage.INLAY || floor.isEmpty()) {
      return false;
    }
    if (board.hasFiles() && !board.getFiles().isEmpty()) {
      add(board.getFiles().get(0).toPath());
      return true;
    }
    if (!board.hasImage()) {
      return false;
    }
    Image image = board.getImage();
    int w = (int) image.getWidth();
    int h = (int) image.getHeight();
    int[] argb = new int[w * h];
    image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), argb, 0, w);
    String name = bench.words().say("desk.app.inlay.pasted") + ".png";
    run(folder -> SiblingFiles.write(folder, name, PngPixels.write(w, h, argb)), floor.get());
    return true;
  }

  /**
   * A graphic to be laid.
   *
   * @param file its name beside the plan
   * @param wide the lesser measure of the floor, mm
   */
  private record CopiedGraphic(String file, Spot middle, double wide) {}

  /** What was copied in another program before is not pasted any more. */
  static void forgetOutside() {
    ClipboardContent nothing = new ClipboardContent();
    nothing.putString("");
    Clipboard.getSystemClipboard().setContent(nothing);
  }

  private CopiedGraphic lay(Copying copying, FloorPicture floor) throws IOException {
    String file = copying.into(parts.keeper().folder());
    Bounds b = floor.bounds();
    return new CopiedGraphic(file, Spot.of(floor.roomiest()), Math.min(b.width(), b.height()));
  }

  private void noFloor() {
    bench.desk().refuse(Message.of("desk.app.inlay.draw-a-floor-first"));
  }

  private void place(CopiedGraphic laid) {
    Optional<FloorArea> area = bench.focus().areaOf(bench.desk().site());
    if (area.isEmpty()) {
      noFloor();
      return;
    }
    Inlay inlay = inlay(area.get(), laid);
    if (bench.desk().push(new AreaEdit.PutInlay(area.get().id(), inlay)).isOk()) {
      bench.focus().goTo(Stage.INLAY);
      bench.focus().select(new PlanItem.OfInlay(inlay.id()));
    }
  }

  private Inlay inlay(FloorArea area, CopiedGraphic laid) {
    boolean metric = bench.desk().site().units() == UnitSystem.METRIC;
    double unit = metric ? 500 : 304.8;
    double wide = Math.max(unit, Math.floor(laid.wide() / 3 / unit) * unit);
    String file = laid.file();
    int dot = file.lastIndexOf('.');
    return new Inlay(
        NewIds.inlay(area),
        (dot < 0 ? file : file.substring(0, dot)).replace('-', ' '),
        file,
        "",
        laid.middle(),
        Length.mm(wide),
        0,
        StencilSpec.forRoll(metric ? Length.mm(1220) : Length.inches(48)));
  }
}
