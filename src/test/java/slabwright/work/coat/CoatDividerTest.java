package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Finish;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;

/** Coats of invented large floors. */
class CoatDividerTest {
  private static final Duration DAY = Duration.ofHours(9);

  private static CoatParameters job(String product, Region floor, int people) {
    return job(product, floor, people, 18);
  }

  private static CoatParameters job(String product, Region floor, int people, double celsius) {
    return job(product, floor, people, celsius, people + 1);
  }

  static CoatParameters job(String product, Region floor, int people, double celsius, int crew) {
    Product p =
        BookSamples.book().products().stream()
            .filter(x -> x.id().equals(product))
            .findFirst()
            .orElseThrow();
    double pitch = p.laying().rollerMm().maybe().orElseThrow() * 0.85;
    return new CoatParameters(
        "hall",
        1,
        p,
        Finish.Target.WHOLE_FLOOR,
        1,
        floor.area(),
        floor.boundaryLength(),
        Figure.known(Optional.of(new LaneGrid(floor, wayOut(floor), pitch))),
        p.laying().rate(),
        Figure.known(people),
        OptionalDouble.of(celsius),
        OptionalDouble.of(celsius),
        Figure.known(crew));
  }

  static Vec wayOut(Region floor) {
    return new Vec(floor.bounds().middle().x(), floor.bounds().minY());
  }

  static Region hall(double width, double depth) {
    return Region.rectangle(new Bounds(0, 0, width, depth));
  }

  private static CoatPlan plan(String product, Region floor, int people, List<Line> joints) {
    return CoatDivider.plan(
        job(product, floor, people),
        new DivisionParameters(floor, wayOut(floor), joints, List.of(), DAY));
  }

  @Property(tries = 200)
  void every_section_is_done_in_a_day_and_together_they_are_the_floor(@ForAll long seed) {
    Random random = new Random(seed);
    double width = 15_000 + 35_000 * random.nextDouble();
    double depth = 8_000 + 17_000 * random.nextDouble();
    Region floor = random.nextBoolean() ? hall(width, depth) : hall(depth, width);
    if (random.nextInt(3) == 0) {
      floor = floor.minus(Region.rectangle(new Bounds(4_000, 3_000, 7_000, 6_000)));
    }
    int people = 1 + random.nextInt(3);
    CoatPlan whole = CoatPlan.of(job("sealer", floor, people));
    CoatPlan plan = plan("sealer", floor, people, List.of());
    boolean fits = whole.coatTime().maybe().orElseThrow().compareTo(DAY) <= 0;
    boolean wet = whole.keepsWetEdge().maybe().orElseThrow();
    assertThat(!fits || !wet || plan.divided().isEmpty()).isTrue();
    assertThat(fits || plan.divided().isPresent()).isTrue();
    if (plan.divided().isPresent()) {
      List<DividedCoat.Section> sections = plan.divided().orElseThrow().sections();
      assertThat(sections)
          .allSatisfy(
              s -> assertThat(s.plan().coatTime().maybe().orElseThrow()).isLessThanOrEqualTo(DAY));
      double area = sections.stream().mapToDouble(s -> s.region().area()).sum();
      assertThat(area).isCloseTo(floor.area(), within(1e-5 * floor.area()));
      assertThat(sections.stream().mapToDouble(DividedCoat.Section::share).sum())
          .isCloseTo(1, within(1e-9));
      double cutIn = sections.stream().mapToDouble(s -> s.plan().job().cutIn()).sum();
      assertThat(cutIn).isCloseTo(floor.boundaryLength(), within(1.0));
      assertThat(plan.lanes().maybe().orElseThrow().orElseThrow().lanes().size())
          .isEqualTo(
              sections.stream()
                  .mapToInt(
                      s -> s.plan().lanes().maybe().orElseThrow().orElseThrow().lanes().size())
                  .sum());
      Vec out = wayOut(floor);
      double first = sections.get(0).region().distanceTo(out);
      assertThat(sections)
          .allSatisfy(s -> assertThat(s.region().distanceTo(out)).isLessThanOrEqualTo(first));
    }
  }

  @Example
  void a_floor_done_in_a_day_whose_lanes_outlast_the_wet_edge_is_divided_until_they_stay_wet() {
    Region floor = hall(20_000, 20_000);
    CoatParameters job = job("sealer", floor, 1, 26, 1);
    CoatPlan whole = CoatPlan.of(job);
    assertThat(whole.coatTime().maybe().orElseThrow()).isLessThan(DAY);
    assertThat(whole.keepsWetEdge().maybe().orElseThrow()).isFalse();
    CoatPlan plan =
        CoatDivider.plan(
            job, new DivisionParameters(floor, wayOut(floor), List.of(), List.of(), DAY));
    assertThat(plan.divided().orElseThrow().sections().size()).isGreaterThan(1);
    assertThat(plan.keepsWetEdge().maybe().orElseThrow()).isTrue();
  }

  @Example
  void hands_that_the_crew_has_are_taken_before_a_floor_is_divided() {
    Region floor = hall(20_000, 20_000);
    DivisionParameters site =
        new DivisionParameters(floor, wayOut(floor), List.of(), List.of(), DAY);
    CoatPlan alone = CoatDivider.plan(job("sealer", floor, 1, 18, 1), site);
    assertThat(alone.divided()).isPresent();
    CoatPlan two = CoatDivider.plan(job("sealer", floor, 1, 18, 3), site);
    assertThat(two.divided()).isEmpty();
    assertThat(two.job().people().maybe().orElseThrow()).isEqualTo(2);
    assertThat(two.keepsWetEdge().maybe().orElseThrow()).isTrue();
  }

  /** Nothing but edge: a corridor of 1.2 m, where cutting in is most of the work. */
  @Example
  void a_batch_is_as_large_as_is_cut_in_and_rolled_within_its_working_time() {
    Region floor = hall(60_000, 1_200);
    CoatPlan plan = CoatPlan.of(job("topcoat", floor, 3, 18, 3));
    Batches mixed = plan.mixed().orElseThrow();
    double all = mixed.list().stream().mapToDouble(b -> b.laying().toSeconds()).sum();
    double hands = 3 * all;
    double cutIn = plan.cutIn().maybe().orElseThrow().toSeconds();
    double rolling = floor.area() / plan.job().rate().maybe().orElseThrow() * 3600;
    assertThat(hands).isCloseTo(cutIn + rolling, within(5.0));
    double kept = mixed.list().stream().mapToDouble(b -> b.kept().toSeconds()).sum();
    assertThat(kept).as("one cuts in, then all roll").isCloseTo(cutIn + rolling / 3, within(5.0));
    Duration mixing = Duration.ofMinutes(6);
    assertThat(plan.batchLanes().get(1).begins())
        .as("nobody is free to mix meanwhile")
        .isCloseTo(mixed.list().get(0).kept().plus(mixing), Duration.ofSeconds(30));
  }

  @Example
  void a_kit_that_one_can_not_lay_in_time_is_laid_by_more_of_the_crew() {
    Region floor = hall(60_000, 1_200);
    DivisionParameters site =
        new DivisionParameters(floor, wayOut(floor), List.of(), List.of(), DAY);
    CoatParameters alone = job("topcoat", floor, 1, 32, 1);
    assertThat(CoatDivider.plan(alone, site).batches()).isInstanceOf(Figure.Refused.class);
    CoatPlan more = CoatDivider.plan(job("topcoat", floor, 1, 32, 8), site);
    assertThat(more.job().people().maybe().orElseThrow()).isGreaterThan(1);
    Duration time = more.workingTime().maybe().orElseThrow().minusMinutes(6);
    assertThat(more.mixed().orElseThrow().list())
        .allSatisfy(b -> assertThat(b.laying()).isLessThanOrEqualTo(time));
  }

  @Example
  void more_hands_need_fewer_sections() {
    Region floor = hall(60_000, 25_000);
    int before = Integer.MAX_VALUE;
    for (int people = 1; people <= 4; people++) {
      int sections =
          plan("sealer", floor, people, List.of())
              .divided()
              .map(d -> d.sections().size())
              .orElse(1);
      assertThat(sections).isLessThanOrEqualTo(before);
      before = sections;
    }
    assertThat(before).isLessThan(8);
  }

  @Example
  void joints_are_taken_where_they_lie_well_and_a_short_crack_is_no_joint() {
    Region floor = hall(60_000, 25_000);
    List<Line> joints = new ArrayList<>();
    for (double x = 5_000; x < 60_000; x += 5_000) {
      joints.add(Line.of(new Vec(x, 30), new Vec(x, 24_970)));
    }
    DividedCoat divided = plan("sealer", floor, 2, joints).divided().orElseThrow();
    assertThat(divided.lines()).allMatch(l -> l.source() == DividedCoat.Source.JOINT);
    assertThat(divided.lines()).allMatch(l -> joints.contains(l.line()));
    assertThat(divided.lap()).isPresent();
    List<Line> stub = List.of(Line.of(new Vec(20_000, 0), new Vec(20_000, 9_000)));
    assertThat(plan("sealer", floor, 2, stub).divided().orElseThrow().lines())
        .allMatch(l -> l.source() == DividedCoat.Source.STRAIGHT);
  }

  @Example
  void a_joint_along_the_length_is_taken_where_none_lies_across() {
    Region floor = hall(60_000, 25_000);
    Line lengthwise = Line.of(new Vec(40, 12_400), new Vec(59_960, 12_400));
    DividedCoat without = plan("sealer", floor, 3, List.of()).divided().orElseThrow();
    assertThat(without.sections()).hasSize(2);
    assertThat(without.lines()).allMatch(l -> l.source() == DividedCoat.Source.STRAIGHT);
    assertThat(without.lines().get(0).line().length())
        .as("the short way across")
        .isCloseTo(25_000, within(1.0));
    DividedCoat with = plan("sealer", floor, 3, List.of(lengthwise)).divided().orElseThrow();
    assertThat(with.lines())
        .containsExactly(new DividedCoat.DivisionLine(lengthwise, DividedCoat.Source.JOINT));
    assertThat(with.sections().get(1).region().contains(wayOut(floor)))
        .as("the side away from the door first")
        .isTrue();
  }

  /** An L, longest from west to east, whose tall leg in the west holds more than half. */
  @Example
  void an_angled_floor_is_divided_where_it_is_narrow() {
    Region floor = hall(40_000, 6_000).union(hall(12_000, 32_000)).union(hall(12_000, 6_000));
    CoatParameters job = job("sealer", floor, 1, 18, 1);
    DividedCoat divided =
        CoatDivider.plan(
                job, new DivisionParameters(floor, new Vec(39_000, 0), List.of(), List.of(), DAY))
            .divided()
            .orElseThrow();
    assertThat(divided.lines())
        .allSatisfy(
            l ->
                assertThat(floor.clip(l.line()).stream().mapToDouble(Line::length).sum())
                    .as("across a leg, not along it: %s", l.line().points())
                    .isLessThan(12_001));
  }

  @Example
  void what_is_mixed_whole_is_opened_for_every_section_anew() {
    CoatPlan plan = plan("topcoat", hall(60_000, 25_000), 2, List.of());
    List<DividedCoat.Section> sections = plan.divided().orElseThrow().sections();
    int kits = sections.stream().mapToInt(s -> s.plan().kits().maybe().orElseThrow().count()).sum();
    assertThat(plan.kits().maybe().orElseThrow().count()).isEqualTo(kits);
    assertThat(plan.mixed().orElseThrow().kits()).isEqualTo(kits);
  }

  /** The list of lanes had all who lay cut in and roll at once: it ended long before the row. */
  @Example
  void lanes_end_when_the_coat_does_that_the_day_plan_keeps() {
    for (String product : List.of("topcoat", "sealer")) {
      CoatPlan plan = CoatPlan.of(job(product, hall(12_000, 9_000), 2));
      Duration first = plan.product().mixing().mixingTime().maybe().orElse(Duration.ZERO);
      boolean before = !plan.cutInOutlastsWetEdge().maybe().orElse(true);
      Duration rolled = plan.lanes().maybe().orElseThrow().orElseThrow().length();
      Duration cutIn = before ? plan.cutIn().maybe().orElseThrow() : Duration.ZERO;
      assertThat(rolled.plus(first).plus(cutIn))
          .as(product)
          .isCloseTo(plan.coatTime().maybe().orElseThrow(), Duration.ofSeconds(5));
    }
  }

  /** A corridor where one cuts in for hours: mixed by the faster pace, it sets in the pail. */
  @Example
  void a_batch_that_outlasts_its_working_time_at_the_pace_of_the_plan_is_told() {
    CoatPlan narrow = CoatPlan.of(job("topcoat", hall(60_000, 1_200), 3));
    CoatPlan wide = CoatPlan.of(job("topcoat", hall(12_000, 9_000), 3));
    assertThat(narrow.mixed().orElseThrow().list()).anyMatch(narrow::isLaidLate);
    assertThat(wide.mixed().orElseThrow().list()).noneMatch(wide::isLaidLate);
  }

  @Example
  void batches_of_a_section_are_timed_from_its_own_start() {
    CoatPlan plan = plan("topcoat", hall(60_000, 25_000), 2, List.of());
    List<BatchLanes> all = new ArrayList<>();
    for (DividedCoat.Section s : plan.divided().orElseThrow().sections()) {
      List<BatchLanes> own = plan.batchLanes(s);
      assertThat(own.get(0).begins()).isEqualTo(Duration.ZERO);
      assertThat(own.get(own.size() - 1).begins())
          .isLessThan(s.plan().coatTime().maybe().orElseThrow());
      all.addAll(own);
    }
    assertThat(all)
        .extracting(BatchLanes::batch, BatchLanes::from, BatchLanes::to)
        .containsExactlyElementsOf(
            plan.batchLanes().stream().map(b -> tuple(b.batch(), b.from(), b.to())).toList());
    assertThat(plan.divided().orElseThrow().sections().size()).isGreaterThan(1);
  }

  @Example
  void lines_on_the_plan_decide_even_where_a_day_would_do() {
    Region floor = hall(12_000, 6_000);
    Line given = Line.of(new Vec(5_000, 0), new Vec(5_000, 6_000));
    CoatPlan plan =
        CoatDivider.plan(
            job("sealer", floor, 2),
            new DivisionParameters(floor, wayOut(floor), List.of(), List.of(given), DAY));
    DividedCoat divided = plan.divided().orElseThrow();
    assertThat(divided.sections()).hasSize(2);
    assertThat(divided.sections().get(1).region().contains(wayOut(floor))).isTrue();
    assertThat(divided.lines()).allMatch(l -> l.source() == DividedCoat.Source.PLAN);
    assertThat(divided.sections().get(0).region().area()).isCloseTo(30e6, within(1e3));
  }

  /** 5 + 6 + 5 m of wall on the left and 7 + 6 + 7 m on the right; 30 and 42 of 72 m². */
  @Example
  void each_section_is_cut_in_along_its_own_walls_and_not_along_the_line() {
    Region floor = hall(12_000, 6_000);
    Line given = Line.of(new Vec(5_000, 0), new Vec(5_000, 6_000));
    DividedCoat divided =
        CoatDivider.plan(
                job("sealer", floor, 2),
                new DivisionParameters(floor, wayOut(floor), List.of(), List.of(given), DAY))
            .divided()
            .orElseThrow();
    assertThat(divided.sections()).extracting(DividedCoat.Section::number).containsExactly(1, 2);
    assertThat(divided.sections().get(0).share()).isCloseTo(30 / 72.0, within(1e-5));
    assertThat(divided.sections().get(1).share()).isCloseTo(42 / 72.0, within(1e-5));
    assertThat(divided.sections().get(0).plan().job().cutIn()).isCloseTo(16_000, within(2.0));
    assertThat(divided.sections().get(1).plan().job().cutIn()).isCloseTo(20_000, within(2.0));
    Product sealer = job("sealer", floor, 2).product();
    double roller = sealer.laying().rollerMm().maybe().orElseThrow();
    double lap = sealer.laying().lap().maybe().orElseThrow();
    assertThat(divided.lap().orElseThrow())
        .isCloseTo(roller * lap, within(1e-9))
        .isBetween(10.0, 150.0);
  }

  /** A second less than the whole takes, and the floor is divided; just as long, and it is not. */
  @Example
  void a_coat_that_takes_just_the_working_day_is_laid_in_one_go() {
    Region floor = hall(12_000, 6_000);
    CoatParameters job = job("sealer", floor, 1, 18, 1);
    CoatPlan whole = CoatPlan.of(job);
    assertThat(whole.keepsWetEdge().maybe().orElseThrow()).isTrue();
    Duration time = whole.coatTime().maybe().orElseThrow();
    assertThat(divided(job, floor, time)).isEmpty();
    DividedCoat parts = divided(job, floor, time.minusSeconds(1)).orElseThrow();
    assertThat(parts.sections()).hasSizeGreaterThan(1);
    assertThat(parts.sections())
        .allSatisfy(s -> assertThat(s.plan().coatTime().maybe().orElseThrow()).isLessThan(time));
  }

  private static Optional<DividedCoat> divided(CoatParameters job, Region floor, Duration day) {
    return CoatDivider.plan(
            job, new DivisionParameters(floor, wayOut(floor), List.of(), List.of(), day))
        .divided();
  }
}
