package slabwright.inlay;

import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.settingout.SettingOutFloor;
import slabwright.inlay.settingout.SettingOutParameters;
import slabwright.site.Inlay;
import slabwright.units.Message;
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
