package slabwright.inlay;

import java.util.Optional;
import slabwright.inlay.masking.FloorAround;
import slabwright.inlay.panel.BlankSide;
import slabwright.units.UnitSystem;

/**
 * What an inlay plan must know besides the graphic and its settings.
 *
 * @param perColour one stencil a colour; false puts all dyed colours into one stencil
 * @param trafficFrom the side of the blank, as read, that people come from
 * @param placed where the inlay lies, when it lies on a floor
 * @param units in which findings write lengths
 */
public record InlayContext(
    boolean perColour, BlankSide trafficFrom, Optional<OnFloor> placed, UnitSystem units) {
  /** A placed inlay and the floor around it, both in the site's frame. */
  public record OnFloor(Placement placement, FloorAround floor) {}

  /** A graphic by itself: no floor, no shop book, read from below, one stencil a colour. */
  public static InlayContext graphicAlone() {
    return new InlayContext(true, BlankSide.BOTTOM, Optional.empty(), UnitSystem.METRIC);
  }

  /** All dyed colours in one stencil. */
  public InlayContext asOneStencil() {
    return new InlayContext(false, trafficFrom, placed, units);
  }

  public InlayContext on(OnFloor floor) {
    return new InlayContext(perColour, trafficFrom, Optional.of(floor), units);
  }

  public InlayContext withTrafficFrom(BlankSide side) {
    return new InlayContext(perColour, side, placed, units);
  }

  public InlayContext in(UnitSystem system) {
    return new InlayContext(perColour, trafficFrom, placed, system);
  }
}
