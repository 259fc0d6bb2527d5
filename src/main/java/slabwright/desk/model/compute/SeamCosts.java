package slabwright.desk.model.compute;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.desk.model.Wish;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.panel.SeamCost;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.panel.StripDirection;
import slabwright.site.FloorArea;
import slabwright.site.HandSeams;
import slabwright.site.Inlay;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;

/**
 * What seams set by hand cost above the best ones, also while one is dragged. Worked out off the
 * asking thread.
 */
public final class SeamCosts implements AutoCloseable {
  private final Computed<Question, Map<String, Bill>> bills;

  /** What the seams cost and what the best ones would. */
  public record Bill(SeamCost now, SeamCost best) {
    /** How much more they cost; 0 for the best. */
    public double above() {
      return now.total() - best.total();
    }

    /** Says what they cost, and how that compares. */
    public Message words() {
      String total = QuantityFormat.number(now.total(), 0);
      return above() < 0.5
          ? Message.of("desk.model.seam-costs.as-cheap-as-the-best", total)
          : Message.of(
              "desk.model.seam-costs.above-the-best", total, QuantityFormat.number(above(), 0));
    }

    /** The same with loose pieces that are cut through, where that differs. */
    public Message inFull() {
      return now.looseCut() == best.looseCut()
          ? words()
          : Message.of(
              "desk.model.seam-costs.loose-pieces-cut", words(), now.looseCut(), best.looseCut());
    }
  }

  /**
   * Which seams of which inlays.
   *
   * @param round of the answers, which says that they are still the same
   */
  private record Question(long round, Map<String, HandSeams> seams, List<ComputedInlay> answers) {}

  private record Priced(SeamPlanner planner, SeamCost best) {}

  /** Follows the desk and the answers. */
  public SeamCosts(Desk desk, Selection focus, SelectedAreaResults answers, Executor home) {
    Weigher weigher = new Weigher();
    bills =
        new Computed<>(
                Computed.Pace.patient("seams"),
                home,
                weigher::bills,
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.seams", why)))
            .follow(
                () -> {
                  Map<String, HandSeams> seams = seams(focus.areaOf(desk.shown()));
                  return seams.isEmpty()
                      ? Wish.nothing()
                      : Wish.of(new Question(answers.version(), seams, answers.inlays()));
                },
                desk.changed(),
                answers.changed());
  }

  private static Map<String, HandSeams> seams(Optional<FloorArea> area) {
    Map<String, HandSeams> seams = new TreeMap<>();
    for (Inlay i : area.map(FloorArea::inlays).orElse(List.of())) {
      i.spec().changes().seams().ifPresent(s -> seams.put(i.id(), s));
    }
    return seams;
  }

  public Signal changed() {
    return bills.changed();
  }

  /** The bill of an inlay whose seams were set by hand; empty until it has been worked out. */
  public Optional<Bill> bill(String inlayId) {
    return bills.value().map(b -> b.get(inlayId));
  }

  /** What the seams of an inlay cost, in a few words. */
  public Message words(Inlay inlay) {
    return inlay.spec().changes().seams().isEmpty()
        ? Message.of("desk.model.seam-costs.where-it-costs-least")
        : bill(inlay.id())
            .map(Bill::words)
            .orElseGet(() -> Message.of("desk.model.seam-costs.weighing"));
  }

  public boolean isUpToDate() {
    return !bills.isBusy();
  }

  /** Works on the worker's thread alone; plans and best seams are kept for a round of answers. */
  private static final class Weigher {
    private final Map<String, Priced> known = new HashMap<>();
    private long round;

    Map<String, Bill> bills(Question q) {
      if (round != q.round) {
        known.clear();
        round = q.round;
      }
      Map<String, Bill> all = new TreeMap<>();
      for (ComputedInlay a : q.answers) {
        HandSeams seams = q.seams.get(a.inlay().id());
        Optional<Priced> priced = seams == null ? Optional.empty() : priced(a);
        priced.ifPresent(p -> all.put(a.inlay().id(), new Bill(cost(p, seams), p.best)));
      }
      return all;
    }

    private static SeamCost cost(Priced p, HandSeams seams) {
      List<Double> places = seams.places().stream().map(Length::mm).toList();
      return p.planner.costOf(StripDirection.of(seams.strips()), places);
    }

    private Optional<Priced> priced(ComputedInlay answer) {
      String id = answer.inlay().id();
      if (!known.containsKey(id)) {
        answer
            .plan()
            .flatMap(p -> p.seamPlanner(answer.inlay().spec()))
            .ifPresent(p -> known.put(id, new Priced(p, p.best().cost())));
      }
      return Optional.ofNullable(known.get(id));
    }
  }

  @Override
  public void close() {
    bills.close();
  }
}
