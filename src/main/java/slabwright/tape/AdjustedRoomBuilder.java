package slabwright.tape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.tape.AdjustedRoom.Corner;
import slabwright.tape.AdjustedRoom.Method;
import slabwright.tape.ReadingReport.Use;
import slabwright.tape.leastsquares.DesignRow;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.Observation;
import slabwright.tape.leastsquares.Reliability;
import slabwright.tape.leastsquares.Suspect;
import slabwright.tape.leastsquares.Traverse;
import slabwright.tape.leastsquares.TurnObservation;
import slabwright.units.UnitSystem;

/** Turns a solution into the values that people and other rooms of the house read. */
final class AdjustedRoomBuilder {
  private final TapeRoom room;
  private final RoomObservations observations;
  private final AdjustmentSolution solution;
  private final UnitSystem units;
  private final Reliability quality;
  private final ClosingReport closing;
  private final Method method;
  private final double[] xy;
  private final int redundancy;
  private final double sigma;

  AdjustedRoomBuilder(
      TapeRoom room, RoomObservations observations, AdjustmentSolution solution, UnitSystem units) {
    this.room = room;
    this.observations = observations;
    this.solution = solution;
    this.units = units;
    quality = solution.quality().orElseThrow();
    closing = ClosingReport.of(observations);
    method = plain() ? Method.COMPASS_RULE : Method.LEAST_SQUARES;
    xy =
        plain()
            ? Traverse.of(observations.about(), observations.rows(), -1).closedCorners()
            : solution.fit().xy();
    redundancy = solution.used().size() - (2 * room.corners() - 3);
    sigma = redundancy == 0 ? 1 : Math.sqrt(solution.fit().sumOfSquares() / redundancy);
  }

  /** Walls and turns and nothing else, each wall once. */
  private boolean plain() {
    long walls =
        observations.rows().stream()
            .filter(
                o ->
                    o instanceof DistanceObservation s && s.to() == (s.from() + 1) % room.corners())
            .count();
    long turns = observations.rows().stream().filter(TurnObservation.class::isInstance).count();
    return closing.complete()
        && walls == room.corners()
        && walls + turns == observations.rows().size();
  }

  AdjustedRoom build() {
    List<Double> rises = rises();
    OutlineArea area = new OutlineArea(xy, rises);
    List<ReadingReport> readings = readings();
    return new AdjustedRoom(
        room,
        method,
        corners(),
        rises,
        area.area(),
        method == Method.COMPASS_RULE
            ? Optional.empty()
            : Optional.of(area.standardDeviation(quality, room.tapeError()) * scale()),
        redundancy,
        sigma,
        closing,
        readings,
        advice(readings));
  }

  private List<TapeAdvice> advice(List<ReadingReport> readings) {
    TapeAdvisor advisor = new TapeAdvisor(room, observations, xy, units).suspects(solution);
    TapeAdvisor closed = method == Method.COMPASS_RULE ? advisor.closing(closing) : advisor;
    return closed.scatter(scatter(), redundancy).shape().checks(readings).advice();
  }

  /** How the residuals compare with the stated errors, without a reading that is suspected. */
  private double scatter() {
    return solution
        .open()
        .filter(s -> redundancy > 1)
        .map(s -> Math.sqrt(s.without().sumOfSquares() / (redundancy - 1)))
        .orElse(sigma);
  }

  /** Stated errors are never made better than stated. */
  private double scale() {
    return Math.max(1, sigma);
  }

  private List<Corner> corners() {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < room.corners(); i++) {
      corners.add(new Corner(CornerName.of(i), new Vec(xy[2 * i], xy[2 * i + 1]), ellipse(i)));
    }
    return corners;
  }

  private Optional<ErrorEllipse> ellipse(int i) {
    if (method == Method.COMPASS_RULE) {
      return Optional.empty();
    }
    double xx = quality.cofactor(2 * i, 2 * i);
    double yy = quality.cofactor(2 * i + 1, 2 * i + 1);
    return Optional.of(ErrorEllipse.of(xx, yy, quality.cofactor(2 * i, 2 * i + 1)).times(scale()));
  }

  private List<Double> rises() {
    boolean left = new OutlineArea(xy, Collections.nCopies(room.corners(), 0.0)).leftHanded();
    List<Double> rises = new ArrayList<>(Collections.nCopies(room.corners(), 0.0));
    for (Reading r : room.readings()) {
      if (r instanceof Reading.Curve c) {
        rises.set(c.wall(), c.outward() == left ? c.rise().mm() : -c.rise().mm());
      }
    }
    return rises;
  }

  private List<ReadingReport> readings() {
    List<ReadingReport> reports = new ArrayList<>();
    for (int k = 0; k < solution.used().size(); k++) {
      reports.add(used(solution.used().get(k), k));
    }
    for (Suspect s : solution.leftOut()) {
      reports.add(report(s.reading(), s.redundancy(), s.statistic(), 0, Use.LEFT_OUT));
    }
    reports.sort(Comparator.comparingInt(ReadingReport::index));
    return reports;
  }

  private ReadingReport used(int row, int k) {
    DesignRow slopes = new DesignRow();
    observations.rows().get(row).slopes(solution.fit().xy(), slopes);
    double sd = Math.sqrt(Math.max(0, quality.cofactor(slopes))) * scale();
    return report(row, quality.redundancy(k), quality.statistic(k), sd, Use.USED);
  }

  private ReadingReport report(int row, double r, double w, double adjustedSd, Use use) {
    Observation o = observations.rows().get(row);
    int index = observations.reading(row);
    boolean turn = o instanceof TurnObservation;
    double unit = turn ? Math.toDegrees(1) : 1;
    return new ReadingReport(
        index,
        room.readings().get(index).name(room.corners()),
        turn,
        o.read() * unit,
        (o.read() - o.misfit(xy)) * unit,
        o.sd() * unit,
        adjustedSd * unit,
        r,
        w,
        use);
  }
}
