package slabwright.inlay;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.settingout.SettingOutFloor;
import slabwright.inlay.settingout.SettingOutParameters;
import slabwright.site.Inlay;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/** An inlay of the plan with its graphic read and all that follows from where it lies. */
public record PlacedInlay(Inlay inlay, Artwork artwork, InlayPlan plan) {
  /** The inlay computed, or why not. */
  public sealed interface Placing {
    /** Computed. */
    record Done(PlacedInlay placed) implements Placing {}

    /** Not computed. */
    record Refused(Inlay inlay, Message message) implements Placing {}
  }

  /**
   * Reads the graphic and plans the inlay on its floor.
   *
   * @param graphic the file
   * @param takeoff of the floor area it lies on
   * @param units in which findings write sizes
   * @throws IOException when the file breaks while it is read
   */
  public static Placing of(Inlay inlay, Path graphic, FloorTakeoff takeoff, UnitSystem units)
      throws IOException {
    Result<GraphicReader.Reading> reading =
        GraphicReader.read(
            graphic, inlay.width().mm(), inlay.spec(), GraphicSettings.of(inlay.source()));
    if (reading instanceof Result.Refused<GraphicReader.Reading> refused) {
      return new Placing.Refused(inlay, refused.message());
    }
    GraphicReader.Reading read = reading.orThrow();
    InlayContext context = InlayContextBuilder.of(inlay, takeoff).build(read.graphic()).in(units);
    return new Placing.Done(planned(inlay, read, context));
  }

  static PlacedInlay planned(Inlay inlay, GraphicReader.Reading read, InlayContext context) {
    InlayPlan plan = InlayPlan.of(read.graphic(), inlay.spec(), context);
    return new PlacedInlay(inlay, read.artwork(), plan);
  }

  /** What people call the colour of one of its stencils. */
  public Message colourName(String colour) {
    return DyeNames.of(inlay, plan).get(colour);
  }

  /**
   * How it is set out on its floor; empty while it has no panels.
   *
   * @param units whose whole feet or meters square a line off
   */
  public Optional<SettingOut> settingOut(FloorTakeoff takeoff, UnitSystem units) {
    SettingOutFloor floor =
        new SettingOutFloor(
            takeoff.net(), takeoff.area().outline(), takeoff.area().doorways(), units);
    return plan.toSite()
        .flatMap(
            toSite ->
                plan.panels()
                    .map(
                        p ->
                            SettingOut.of(
                                p,
                                inlay.middle().vec(),
                                toSite,
                                floor,
                                SettingOutParameters.usual())));
  }
}
