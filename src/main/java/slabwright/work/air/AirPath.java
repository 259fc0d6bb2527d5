package slabwright.work.air;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Where fresh air comes in and where it is drawn out: the pair of openings farthest apart, so that
 * the air sweeps the floor.
 *
 * @param inlet an opening left open for fresh air
 * @param outlet where the fan draws, low, because the vapour is heavier than air
 */
public record AirPath(Place inlet, Place outlet) {
  /** A named place on the plan, mm. */
  public record Place(String name, Vec at) {}

  /** What to watch when setting it up. */
  public static final List<Message> ADVICE =
      List.of(
          Message.of("work.air-path.draw-out-low"),
          Message.of("work.air-path.fans-made-for-vapour"),
          Message.of("work.air-path.blow-out-away-from-doors"),
          Message.of("work.air-path.run-it-until-clear"));

  /**
   * The farthest pair.
   *
   * @param openings doors and ways in
   * @param outlets air outlets marked on the plan; when empty an opening serves
   */
  public static Optional<AirPath> of(List<Place> openings, List<Place> outlets) {
    List<Place> out = outlets.isEmpty() ? openings : outlets;
    return openings.stream()
        .flatMap(i -> out.stream().filter(o -> !o.equals(i)).map(o -> new AirPath(i, o)))
        .max(Comparator.comparing(AirPath::length));
  }

  /** How far the air sweeps, in mm. */
  public double length() {
    return inlet.at().distanceTo(outlet.at());
  }
}
