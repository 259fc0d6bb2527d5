package slabwright.tape.leastsquares;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Finds the reading that spoils a fit. A gross error bends the whole room, so the residuals of the
 * bent fit only choose the candidates; each is then left out in turn, the room fitted afresh from a
 * walk that does without it, and the one whose absence heals most is named.
 */
public final class BlunderSearch {
  /** Up to this many readings every one is tried; beyond it the worst by test statistic. */
  public static final int TRY_ALL = 60;

  private static final int TRY_WORST = 8;

  /** A room that heals is fitted in far fewer steps. */
  private static final int STEPS = 25;

  /** Further above the best trial than this, a trial can't come near it any more. */
  private static final double HOPELESS = 1e4;

  private final double[] about;
  private final List<Observation> observations;
  private final Datum datum;
  private final BooleanSupplier cancelled;

  private double best = Double.POSITIVE_INFINITY;

  public BlunderSearch(double[] about, List<Observation> observations, BooleanSupplier cancelled) {
    this.about = about.clone();
    this.observations = List.copyOf(observations);
    this.datum = Datum.firstWall(about.length);
    this.cancelled = cancelled;
  }

  /** The suspect, if the largest test statistic of the fit to all readings calls for one. */
  public Optional<Suspect> in(LeastSquaresFit all, Reliability quality) {
    List<Integer> worst =
        IntStream.range(0, observations.size())
            .filter(quality::checked)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -Math.abs(quality.statistic(i))))
            .toList();
    if (worst.isEmpty() || Math.abs(quality.statistic(worst.get(0))) <= Suspect.CRITICAL) {
      return Optional.empty();
    }
    int tries = worst.size() <= TRY_ALL ? worst.size() : TRY_WORST;
    List<Trial> trials =
        worst.stream()
            .limit(tries)
            .map(i -> tried(i, all))
            .sorted(Comparator.comparingDouble(t -> t.fit().sumOfSquares()))
            .toList();
    return Optional.of(suspect(trials, all));
  }

  private record Trial(int reading, LeastSquaresFit fit) {}

  private Trial tried(int i, LeastSquaresFit all) {
    LeastSquaresFit fit = fitWithout(i, all);
    best = Math.min(best, fit.sumOfSquares());
    return new Trial(i, fit);
  }

  private LeastSquaresFit fitWithout(int i, LeastSquaresFit all) {
    List<Observation> rest = new ArrayList<>(observations);
    rest.remove(i);
    LeastSquaresFitter fitter = new LeastSquaresFitter(datum, rest, cancelled);
    double hopeless = observations.size() > TRY_ALL ? best + HOPELESS : Double.POSITIVE_INFINITY;
    LeastSquaresFit fit =
        fitter.from(Traverse.of(about, observations, i).closedCorners(), STEPS, hopeless);
    boolean enough = fitter.good(fit) || observations.size() > TRY_ALL;
    return enough ? fit : fit.better(fitter.from(all.xy(), STEPS, hopeless));
  }

  /** Judged at the healed corners, where the geometry is right. */
  private Suspect suspect(List<Trial> trials, LeastSquaresFit all) {
    LeastSquaresFit healed = trials.get(0).fit();
    int i = trials.get(0).reading();
    Observation o = observations.get(i);
    double misfit = o.misfit(healed.xy());
    double fits = o.read() - misfit;
    Optional<Reliability> quality = Reliability.at(healed.xy(), datum, observations);
    if (quality.isEmpty()) {
      return new Suspect(i, fits, 0, 0, List.of(), 0, healed);
    }
    double redundancy = quality.get().redundancy(i);
    List<Integer> rivals = rivals(quality.get(), i, trials);
    return new Suspect(
        i,
        fits,
        -misfit * Math.sqrt(redundancy) / o.sd(),
        redundancy,
        rivals,
        margin(trials, rivals, all),
        healed);
  }

  /** From the best explanation to the next, rivals that were not among the worst included. */
  private double margin(List<Trial> trials, List<Integer> rivals, LeastSquaresFit all) {
    double best = trials.get(0).fit().sumOfSquares();
    List<Integer> tried = trials.stream().map(Trial::reading).toList();
    if (rivals.size() > TRY_WORST) {
      return 0;
    }
    double next =
        rivals.stream()
            .filter(j -> !tried.contains(j))
            .mapToDouble(j -> fitWithout(j, all).sumOfSquares())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    double second = trials.size() > 1 ? trials.get(1).fit().sumOfSquares() : all.sumOfSquares();
    return Math.min(next, second) - best;
  }

  /** Correlated beyond the bound, or leaving the room as well healed when left out instead. */
  private static List<Integer> rivals(Reliability q, int i, List<Trial> trials) {
    double[] rho = q.correlations(i);
    double best = trials.get(0).fit().sumOfSquares();
    Set<Integer> rivals = new LinkedHashSet<>();
    IntStream.range(0, rho.length)
        .filter(j -> j != i && Math.abs(rho[j]) > Suspect.MOST_CORRELATION)
        .boxed()
        .sorted(Comparator.comparingDouble(j -> -Math.abs(rho[j])))
        .forEach(rivals::add);
    trials.stream()
        .filter(t -> t.reading() != i && t.fit().sumOfSquares() - best < Suspect.SAME)
        .forEach(t -> rivals.add(t.reading()));
    return List.copyOf(rivals);
  }
}
