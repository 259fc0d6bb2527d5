package slabwright.work.book;

import java.time.Duration;
import slabwright.units.Message;

/** Time and dust from an amount and a rate; nothing to do needs no rate. */
public final class RateArithmetic {
  private RateArithmetic() {}

  /** An amount over a rate an hour. */
  public static Figure<Duration> time(double amount, Figure<Double> rate) {
    if (amount <= 0) {
      return Figure.known(Duration.ZERO);
    }
    return rate.flatMap(
        r ->
            r > 0
                ? Figure.known(Duration.ofSeconds(Math.round(amount / r * 3600)))
                : Figure.refused(Message.of("work.rate-arithmetic.a-rate-of-in-the")));
  }

  /** The mass in kg that comes off an area in mm². */
  public static Figure<Double> dust(double mm2, Figure<Double> perArea) {
    return mm2 <= 0 ? Figure.known(0.0) : perArea.map(d -> d * mm2);
  }

  /** One after the other. */
  public static Figure<Duration> sum(Figure<Duration> a, Figure<Duration> b) {
    return a.with(b, Duration::plus);
  }
}
