package slabwright.work.air;

import java.util.ArrayList;
import java.util.List;

/** A concentration over time in minutes, known exactly at every moment from minute 0 on. */
public final class ConcentrationCurve {
  private final List<CurvePiece> pieces;

  ConcentrationCurve(List<CurvePiece> pieces) {
    this.pieces = List.copyOf(pieces);
  }

  /**
   * A stretch with constant source.
   *
   * @param rise source over volume, a minute
   * @param changes air changes a minute
   */
  record CurvePiece(double from, double start, double rise, double changes) {
    double at(double t) {
      double tau = t - from;
      return start * Math.exp(-changes * tau) + rise * tau * phi(changes * tau);
    }

    /** The integral from this piece's start to {@code t}. */
    double sum(double t) {
      double tau = t - from;
      return start * tau * phi(changes * tau) + rise * tau * tau * psi(changes * tau);
    }

    /** (1 - e^-x) / x, 1 at 0. */
    private static double phi(double x) {
      return x < 1e-12 ? 1 : -Math.expm1(-x) / x;
    }

    /** (x - 1 + e^-x) / x², 1/2 at 0. */
    private static double psi(double x) {
      return x < 1e-3 ? 0.5 - x / 6 + x * x / 24 : (x + Math.expm1(-x)) / (x * x);
    }
  }

  /** A moment on the curve. */
  public record Sample(double minute, double share) {}

  public double at(double minute) {
    return minute < 0 ? 0 : piece(minute).at(minute);
  }

  /** The highest moment. Between changes of the source the curve only rises or only falls. */
  public Sample peak() {
    Sample best = new Sample(0, 0);
    for (CurvePiece p : pieces) {
      if (p.start() > best.share()) {
        best = new Sample(p.from(), p.start());
      }
    }
    return best;
  }

  /** The highest moment of a stretch of time. */
  public double peakBetween(double from, double to) {
    double best = Math.max(at(from), at(to));
    for (CurvePiece p : pieces) {
      best = p.from() > from && p.from() < to ? Math.max(best, p.start()) : best;
    }
    return best;
  }

  /** When the last source ends; from here on the curve never rises. */
  public double end() {
    return pieces.get(pieces.size() - 1).from();
  }

  /** The mean over a stretch of time; before minute 0 the air is clean. */
  public double average(double from, double to) {
    return (sumTo(to) - sumTo(from)) / (to - from);
  }

  /**
   * The highest mean over any stretch of that many minutes. The worst stretch reaches over a moment
   * where the source changes, for elsewhere the curve only rises or only falls.
   */
  public double worstAverage(double minutes) {
    double step = minutes / SHIFTS;
    double best = 0;
    double at = 0;
    for (CurvePiece p : pieces) {
      for (int i = 0; i <= SHIFTS; i++) {
        double from = p.from() - i * step;
        double mean = average(from, from + minutes);
        if (mean > best) {
          best = mean;
          at = from;
        }
      }
    }
    return Math.max(best, refined(at - step, at + step, minutes));
  }

  private static final int SHIFTS = 48;

  private double refined(double low, double high, double minutes) {
    double a = low;
    double b = high;
    for (int i = 0; i < 60; i++) {
      double left = a + (b - a) / 3;
      double right = b - (b - a) / 3;
      if (average(left, left + minutes) < average(right, right + minutes)) {
        a = left;
      } else {
        b = right;
      }
    }
    return average(a, a + minutes);
  }

  /** Evenly spaced moments from 0 to {@code until} for drawing, every corner included. */
  public List<Sample> samples(double until, int count) {
    List<Sample> all = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      double t = until * i / count;
      all.add(new Sample(t, at(t)));
    }
    pieces.stream()
        .filter(p -> p.from() > 0 && p.from() < until)
        .forEach(p -> all.add(new Sample(p.from(), p.start())));
    all.sort((a, b) -> Double.compare(a.minute(), b.minute()));
    return List.copyOf(all);
  }

  private double sumTo(double minute) {
    double sum = 0;
    for (int i = 0; i < pieces.size() && pieces.get(i).from() < minute; i++) {
      double to = i + 1 < pieces.size() ? Math.min(minute, pieces.get(i + 1).from()) : minute;
      sum += pieces.get(i).sum(to);
    }
    return sum;
  }

  private CurvePiece piece(double minute) {
    CurvePiece at = pieces.get(0);
    for (CurvePiece p : pieces) {
      if (p.from() > minute) {
        break;
      }
      at = p;
    }
    return at;
  }

  /** Equal when the same at every moment. */
  @Override
  public boolean equals(Object o) {
    return o instanceof ConcentrationCurve c && pieces.equals(c.pieces);
  }

  @Override
  public int hashCode() {
    return pieces.hashCode();
  }
}
