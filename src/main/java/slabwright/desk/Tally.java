package slabwright.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.shell.TallyBar;
import slabwright.floor.FloorFigures;
import slabwright.floor.QuickTakeoff;
import slabwright.inlay.InlayPlan;
import slabwright.project.SiteResult;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.handover.Cost;

/** The figures that never leave, from whatever has been worked out. */
final class Tally {
  private final UnitSystem units;
  private final Words words;

  private Tally(UnitSystem units, Words words) {
    this.units = units;
    this.words = words;
  }

  /**
   * The figures of what is looked at.
   *
   * @param open how many questions of the plan are open
   */
  public static List<TallyBar.Item> of(
      int open,
      SelectedAreaResults answers,
      SiteComputation job,
      Optional<String> areaId,
      UnitSystem units,
      Words words) {
    List<TallyBar.Item> items = new Tally(units, words).items(answers, job, areaId);
    items.add(open(open));
    return items;
  }

  private List<TallyBar.Item> items(
      SelectedAreaResults answers, SiteComputation work, Optional<String> areaId) {
    Optional<SiteResult> job = work.done();
    boolean current = work.current().isPresent();
    List<TallyBar.Item> items = new ArrayList<>();
    Optional<FloorFigures> followed = answers.followed();
    Optional<QuickTakeoff> glance = answers.glance();
    boolean followedIsTrue = answers.isFollowedTrue();
    // Exact figures of a moment ago are nearer than a rough glance of an earlier one.
    boolean exact = followedIsTrue || !answers.isGlanceTrue();
    if (exact && followed.isPresent() && glance.isPresent()) {
      floor(followed.get(), "", hasMachines(glance.get()), items);
    } else if (glance.isPresent()) {
      String about = glance.get().isExact() ? "" : "≈ ";
      floor(glance.get().figures(), about, hasMachines(glance.get()), items);
    } else {
      List.of(netFloor(), machine(), byHand(), edges(), cutIn())
          .forEach(what -> items.add(TallyBar.Item.unknown(what)));
    }
    boolean floor = followedIsTrue || answers.isGlanceTrue();
    items.replaceAll(i -> i.trueIf(floor));
    items.add(inlay(answers).trueIf(answers.isUpToDate()));
    items.add(crew(job).trueIf(current));
    items.add(days(job).trueIf(current));
    items.add(price(work.cost()).trueIf(current));
    items.add(air(job, areaId).trueIf(current));
    return items;
  }

  private static TallyBar.Item open(int questions) {
    TallyBar.Item.Emphasis tone =
        questions > 0 ? TallyBar.Item.Emphasis.LOOK : TallyBar.Item.Emphasis.PLAIN;
    return new TallyBar.Item(
        Message.of("desk.model.tally.still-open"), String.valueOf(questions), tone);
  }

  private Message netFloor() {
    return Message.of("desk.model.tally.net-floor");
  }

  private Message machine() {
    return Message.of("desk.model.tally.machine");
  }

  private Message byHand() {
    return Message.of("desk.model.tally.by-hand");
  }

  private Message edges() {
    return Message.of("desk.model.tally.edges");
  }

  private Message cutIn() {
    return Message.of("desk.model.tally.cut-in");
  }

  private static boolean hasMachines(QuickTakeoff glance) {
    return !glance.area().machines().isEmpty();
  }

  /** The floor's figures, each after what says how near they are. */
  private void floor(FloorFigures f, String about, boolean machines, List<TallyBar.Item> items) {
    items.add(TallyBar.Item.of(netFloor(), about + QuantityFormat.area(f.net(), units)));
    items.add(
        machines
            ? TallyBar.Item.of(machine(), about + QuantityFormat.area(f.machine(), units))
            : new TallyBar.Item(
                machine(), words.say("desk.model.tally.none-set"), TallyBar.Item.Emphasis.UNKNOWN));
    String hand = about + QuantityFormat.area(f.hand(), units);
    items.add(new TallyBar.Item(byHand(), hand, TallyBar.Item.Emphasis.LOOK));
    items.add(TallyBar.Item.of(edges(), about + QuantityFormat.run(f.edgeLength(), units)));
    items.add(TallyBar.Item.of(cutIn(), about + QuantityFormat.run(f.cutIn(), units)));
  }

  private TallyBar.Item inlay(SelectedAreaResults answers) {
    double area =
        answers.inlays().stream()
            .flatMap(i -> i.plan().stream())
            .mapToDouble(InlayPlan::openingArea)
            .sum();
    Message what = Message.of("desk.model.tally.inlay");
    return area > 0
        ? TallyBar.Item.of(what, QuantityFormat.area(area, units))
        : TallyBar.Item.unknown(what);
  }

  private static String hours(Duration d) {
    return QuantityFormat.number(d.toMinutes() / 60.0, 0);
  }

  private TallyBar.Item crew(Optional<SiteResult> job) {
    Message what = Message.of("desk.model.tally.crew-whole-site");
    if (job.filter(d -> !d.work().outlook().canStart()).isPresent()) {
      String said = words.say("desk.model.tally.cannot-start");
      return new TallyBar.Item(what, said, TallyBar.Item.Emphasis.CANT);
    }
    return job.flatMap(d -> d.work().presence().maybe())
        .map(p -> words.say("desk.model.tally.hours", hours(p.steps()), hours(p.present())))
        .map(v -> TallyBar.Item.of(what, v))
        .orElse(TallyBar.Item.unknown(what));
  }

  /** Days on which somebody works. */
  private static TallyBar.Item days(Optional<SiteResult> job) {
    Message what = Message.of("desk.model.tally.days");
    return job.flatMap(d -> d.work().days().maybe())
        .map(
            d ->
                d.steps().stream()
                    .flatMap(s -> s.spans().stream())
                    .map(s -> s.start().toLocalDate())
                    .distinct()
                    .count())
        .map(n -> TallyBar.Item.of(what, String.valueOf(n)))
        .orElse(TallyBar.Item.unknown(what));
  }

  /** What is known of the price; "at least" while a line of it is missing. */
  private TallyBar.Item price(Optional<Cost> cost) {
    Message what = Message.of("desk.model.tally.price");
    return cost.filter(c -> c.known().signum() > 0)
        .map(
            c ->
                TallyBar.Item.of(
                    what,
                    c.total().isKnown()
                        ? words.say("desk.model.tally.amount", c.known(), c.currency())
                        : words.say("desk.model.tally.at-least", c.known(), c.currency())))
        .orElse(TallyBar.Item.unknown(what));
  }

  private TallyBar.Item air(Optional<SiteResult> job, Optional<String> areaId) {
    TallyBar.Item none = TallyBar.Item.of(fanOff(), words.say("desk.model.tally.no-vapour"));
    return job.flatMap(d -> areaId.flatMap(d.work()::area))
        .flatMap(a -> a.air().maybe())
        .map(a -> a.screening().map(this::air).orElse(none))
        .orElse(TallyBar.Item.unknown(fanOff()));
  }

  private Message fanOff() {
    return Message.of("desk.model.tally.air-fan-off");
  }

  /** The careful reading rules: all vapour in the lowest metre. */
  private TallyBar.Item air(AirScreening s) {
    double peak = s.closed().layerPeakLel();
    String value =
        words.say("desk.model.tally.of-lel", QuantityFormat.number(peak * 100, peak < 0.1 ? 1 : 0));
    TallyBar.Item.Emphasis tone =
        peak >= AirFigures.HAZARDOUS_SHARE
            ? TallyBar.Item.Emphasis.CANT
            : TallyBar.Item.Emphasis.PLAIN;
    return new TallyBar.Item(fanOff(), value, tone);
  }
}
