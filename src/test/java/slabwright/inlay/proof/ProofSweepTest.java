package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;

/**
 * Returned drawings with one fault whose size is swept around its limit, at jobs from 0.3 to 8 m,
 * laid on the page at random. Clearly above the limit it is never called right, clearly below it
 * always; the limits are the absolute ones of the design.
 */
class ProofSweepTest {
  private static final double ABOVE = 1.06;
  private static final double BELOW = 0.85;
  private static final String[] GRAPHICS = {
    "bicycle.svg", "luggage.svg", "calendar-week.svg", "cup-hot.svg", "tree.svg", "gear.svg"
  };

  private final Map<SweptFault, int[]> told = new EnumMap<>(SweptFault.class);
  private final List<String> wrong = new ArrayList<>();

  @Test
  void of_random_drawings_none_above_a_limit_is_called_right() {
    sweep(42, 41);
  }

  @Test
  @Tag("long")
  void over_10000_random_drawings_none_above_a_limit_is_called_right() {
    sweep(10_000, 7);
  }

  /**
   * A needle whose root had become part of a long side, by rounding, was taken for a speck that
   * stands by itself: 3 of 39 were called right.
   */
  @Test
  void a_needle_that_grows_from_a_long_side_is_no_speck() {
    Random random = new Random(6);
    ProofCases icon = ProofCases.icon("cup-hot.svg");
    double k = 2462 / (icon.blank().width() - 100);
    Region openings =
        icon.openings()
            .map(Affine.move(-50, -50).then(Affine.scale(k, k)).then(Affine.move(50, 50)));
    Bounds blank = new Bounds(0, 0, 2562, (icon.blank().height() - 100) * k + 100);
    for (int i = 0; i < 40; i++) {
      double by = 1.08 + random.nextDouble();
      Region drawn =
          SweptFault.NEEDLE
              .returned(openings, blank, by, random)
              .orElseThrow()
              .sheets()
              .get(0)
              .openings();
      Affine pose = Affine.turn(random.nextDouble() * 6.28);
      Region laid = drawn.map(pose).map(pose.inverse());
      assertThat(
              new OpeningsDifference(ProofLimits.USUAL, openings, laid, blank.grown(-1.5), 0)
                  .straying()
                  .places())
          .as(() -> "needle of " + by)
          .isPositive();
    }
  }

  /**
   * Openings turned in their panel by less than the limit end elsewhere at the panel's edge, which
   * was taken for an edge that strays: 2 of 2,400 were refused.
   */
  @ParameterizedTest
  @CsvSource({"cup-hot.svg, 835, 1.67", "calendar-week.svg, 1162, 1.61"})
  void a_panel_turned_by_less_than_the_limit_is_cut(String graphic, double width, double by) {
    Job job = Job.of(ProofCases.icon(graphic), width);
    for (int seed = 0; seed < 5; seed++) {
      Random random = new Random(seed);
      job.returned(SweptFault.PANEL_TURN, by, random)
          .ifPresent(
              back ->
                  assertThat(run(back, random).verdict())
                      .as(() -> graphic + " turned in a panel by " + by)
                      .isEqualTo(ProofVerdict.CUT));
    }
  }

  /**
   * A gear of eight teeth that are drawn a little unlike each other was laid on the plan turned by
   * one that hid part of a bump of 1.39 mm: it came out as 0.97 mm, once as 0.94 mm and right.
   */
  @Test
  void a_bump_is_not_hidden_by_turning_a_graphic_that_is_nearly_alike_all_round() {
    Job job = Job.of(ProofCases.icon("gear.svg"), 7721);
    int bumps = 0;
    for (int seed = 0; seed < 5; seed++) {
      Random random = new Random(seed);
      Optional<SweptFault.Returned> back = job.returned(SweptFault.BUMP, 1.39, random);
      bumps += back.isPresent() ? 1 : 0;
      back.ifPresent(
          b -> assertThat(run(b, random).figures().edge()).isCloseTo(1.39, within(0.01)));
    }
    assertThat(bumps).isPositive();
  }

  /**
   * A part far out pulled size and turn of the whole along, so that its own edge came out as 0.95
   * mm off and the drawing as right.
   */
  @Test
  void a_part_that_has_moved_does_not_turn_or_stretch_the_rest_towards_it() {
    Job job = Job.of(ProofCases.icon("luggage.svg"), 578);
    int moved = 0;
    for (int seed = 0; seed < 24; seed++) {
      Random random = new Random(seed);
      Optional<SweptFault.Returned> back = job.returned(SweptFault.PART_MOVED, 1.154, random);
      moved += back.isPresent() ? 1 : 0;
      back.ifPresent(
          b -> assertThat(run(b, random).figures().edge()).isCloseTo(1.154, within(0.03)));
    }
    assertThat(moved).isPositive();
  }

  private void sweep(int tries, long seed) {
    Random random = new Random(seed);
    List<ProofCases> graphics = new ArrayList<>();
    for (String name : GRAPHICS) {
      graphics.add(ProofCases.icon(name));
    }
    List<SweptFault> faults = List.of(SweptFault.values());
    for (int i = 0; i < tries; i++) {
      SweptFault fault = faults.get(i % faults.size());
      one(graphics.get(random.nextInt(graphics.size())), fault, random);
    }
    told.forEach(
        (fault, n) ->
            System.out.printf(
                Locale.ROOT,
                "  %-14s above: %d not cut; below: %d cut; at the limit: %d%n",
                fault,
                n[0],
                n[1],
                n[2]));
    assertThat(wrong).isEmpty();
  }

  private void one(ProofCases icon, SweptFault fault, Random random) {
    Job job = Job.of(icon, 300 * Math.pow(8000.0 / 300, random.nextDouble()));
    double factor = 0.5 + 1.5 * random.nextDouble();
    job.returned(fault, factor * fault.limit(), random)
        .ifPresent(back -> judge(job, fault, factor, run(back, random)));
  }

  private static ProofReport run(SweptFault.Returned back, Random random) {
    Affine pose =
        Affine.turn(random.nextDouble() * 2 * Math.PI)
            .then(Affine.move(random.nextDouble() * 500, random.nextDouble() * 500));
    return ProofCheck.run(back.plan(), drawing(back, pose), ShadingMeaning.PULLED_OUT);
  }

  /** A graphic of some width in its blank. */
  private record Job(String name, double width, Region openings, Bounds blank) {
    static Job of(ProofCases icon, double width) {
      double k = width / (icon.blank().width() - 100);
      Affine wider = Affine.move(-50, -50).then(Affine.scale(k, k)).then(Affine.move(50, 50));
      Bounds blank = new Bounds(0, 0, width + 100, (icon.blank().height() - 100) * k + 100);
      return new Job(icon.name(), width, icon.openings().map(wider), blank);
    }

    Optional<SweptFault.Returned> returned(SweptFault fault, double by, Random random) {
      return fault.returned(openings, blank, by, random);
    }
  }

  private void judge(Job job, SweptFault fault, double factor, ProofReport report) {
    boolean cut = report.verdict() == ProofVerdict.CUT;
    int[] n = told.computeIfAbsent(fault, k -> new int[3]);
    boolean mustCut = fault == SweptFault.NONE || (fault.limit() > 0 && factor < BELOW);
    boolean mustNot = fault != SweptFault.NONE && (fault.limit() == 0 || factor > ABOVE);
    n[mustNot ? 0 : mustCut ? 1 : 2]++;
    if ((mustCut && !cut) || (mustNot && report.verdict() != ProofVerdict.DO_NOT_CUT)) {
      wrong.add(
          "%s %.0f mm %s of %.3f: %s %s %s"
              .formatted(
                  job.name,
                  job.width,
                  fault,
                  factor * fault.limit(),
                  report.verdict(),
                  report.faults(),
                  report.figures()));
    }
  }

  private static ShopDrawing drawing(SweptFault.Returned returned, Affine pose) {
    List<ShopDrawing.Piece> pieces = new ArrayList<>();
    for (SweptFault.Sheet sheet : returned.sheets()) {
      SweptFault.Sheet laid = sheet.map(pose);
      pieces.add(new ShopDrawing.Piece(List.of(laid.edge()), FillRule.NONZERO, Optional.empty()));
      pieces.add(
          new ShopDrawing.Piece(
              laid.openings().rings(), FillRule.EVEN_ODD, Optional.of("#404a55")));
    }
    return new ShopDrawing(pieces);
  }
}
