package slabwright.work.book;

import slabwright.units.Message;

/**
 * How a product gets onto the floor.
 *
 * @param tool roller, sprayer, brush or pad
 * @param rate mm² an hour for one person
 * @param fastest mm² an hour for one person at the fastest plausible laying; what vapour is
 *     reckoned with
 * @param cutIn mm an hour of cut-in for one person, where it is not sprayed
 * @param people who lay it at once
 * @param rollerMm the roller's width
 * @param lap share of the roller that laps the lane before
 * @param wetEdge how long an edge stays wet enough to lap
 * @param jar mm³ in one sprayer jar
 * @param coldest °C
 * @param hottest °C
 */
public record Laying(
    Figure<LayingTool> tool,
    Figure<Double> rate,
    Figure<Double> fastest,
    Figure<Double> cutIn,
    Figure<Integer> people,
    Figure<Double> rollerMm,
    Figure<Double> lap,
    Figure<TemperatureTable> wetEdge,
    Figure<Double> jar,
    Figure<Double> coldest,
    Figure<Double> hottest) {

  /** Whether it is known to be sprayed: then the walls are masked and nobody cuts in by brush. */
  public boolean isSprayed() {
    return tool.equals(Figure.known(LayingTool.SPRAYER));
  }

  static Laying read(BookSection s) {
    return new Laying(
        s.choice(
            "laid_by", Message.of("work.laying.roller-sprayer-brush-or-pad"), LayingTool.class),
        s.number("laying_rate", BookDimension.AREA_RATE),
        s.number("fastest_laying_rate", BookDimension.AREA_RATE),
        s.number("cut-in_rate", BookDimension.RUN_RATE),
        s.whole("people"),
        s.number("roller", BookDimension.LENGTH),
        s.number("lap", BookDimension.SHARE),
        s.table("wet_edge"),
        s.number("jar", BookDimension.VOLUME),
        s.number("coldest", BookDimension.TEMPERATURE),
        s.number("hottest", BookDimension.TEMPERATURE));
  }
}
