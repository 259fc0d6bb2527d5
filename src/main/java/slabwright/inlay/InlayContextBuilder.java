package slabwright.inlay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.floor.Edge;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.masking.FloorAround;
import slabwright.inlay.panel.BlankSide;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Form;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlineShape;
import slabwright.site.StencilSpec;
import slabwright.units.Message;

/** The floor around a placed inlay: where paper lies or stands, and where people come from. */
record InlayContextBuilder(Inlay inlay, FloorTakeoff takeoff) {
  static InlayContextBuilder of(Inlay inlay, FloorTakeoff takeoff) {
    return new InlayContextBuilder(inlay, takeoff);
  }

  /**
   * Only the floor within reach of the spray, so that what changes elsewhere leaves it equal.
   *
   * @param graphic at its width
   */
  InlayContext build(DyedGraphic graphic) {
    Placement placement = new Placement(inlay.middle().vec(), inlay.turn());
    Bounds near = near(graphic);
    FloorAround around =
        new FloorAround(
            takeoff.net().intersect(Region.rectangle(near)),
            standing().stream().filter(s -> Bounds.of(s.foot().points()).meets(near)).toList());
    return InlayContext.graphicAlone()
        .on(new InlayContext.OnFloor(placement, around))
        .withTrafficFrom(trafficFrom());
  }

  /** A square about the blank, however it is turned, with all that mist can reach. */
  private Bounds near(DyedGraphic graphic) {
    StencilSpec spec = inlay.spec();
    double round = Math.hypot(graphic.painted().width(), graphic.painted().height()) / 2;
    double rim = 2 * (spec.margin().mm() + spec.press().mm() + Math.abs(spec.spread().mm()));
    return Bounds.of(List.of(inlay.middle().vec()))
        .grown(round + rim + 2 * spec.overspray().reachMm());
  }

  /** Everything upright at the floor's edges; trim and glass say how high. */
  private List<FloorAround.UprightObstacle> standing() {
    List<FloorAround.UprightObstacle> all = new ArrayList<>();
    for (Edge e : takeoff.edges()) {
      if (e.kind() != slabwright.site.EdgeClass.OPEN_EDGE) {
        e.lines()
            .forEach(
                l ->
                    all.add(
                        new FloorAround.UprightObstacle(
                            e.kind().label(), l, OptionalDouble.empty())));
      }
    }
    for (Mark m : takeoff.area().marks()) {
      if (m.kind() instanceof MarkKind.MaskedTrim trim && m.form() instanceof Form.Trace trace) {
        Line foot = new Line(trace.path().stream().map(slabwright.site.Spot::vec).toList());
        all.add(
            new FloorAround.UprightObstacle(
                Message.of("inlay.upright-obstacle.named", m.name()),
                foot,
                OptionalDouble.of(trim.height().mm())));
      }
    }
    return all;
  }

  /** The side of the blank, as read, that faces the nearest way in; below when there is none. */
  private BlankSide trafficFrom() {
    return nearestWayIn()
        .map(p -> p.minus(inlay.middle().vec()))
        .map(d -> Affine.turn(Math.toRadians(-inlay.turn())).apply(d))
        .map(InlayContextBuilder::side)
        .orElse(BlankSide.BOTTOM);
  }

  private Optional<Vec> nearestWayIn() {
    OutlineShape shape = OutlineShape.of(takeoff.area().outline(), FloorTakeoff.TOLERANCE);
    return takeoff.area().doorways().stream()
        .filter(Doorway::wayIn)
        .map(d -> shape.doorway(d).points())
        .filter(p -> p.size() > 1)
        .map(p -> p.get(0).towards(p.get(p.size() - 1), 0.5))
        .min(Comparator.comparingDouble(p -> p.distanceTo(inlay.middle().vec())));
  }

  private static BlankSide side(Vec way) {
    if (Math.abs(way.x()) > Math.abs(way.y())) {
      return way.x() > 0 ? BlankSide.RIGHT : BlankSide.LEFT;
    }
    return way.y() > 0 ? BlankSide.TOP : BlankSide.BOTTOM;
  }
}
