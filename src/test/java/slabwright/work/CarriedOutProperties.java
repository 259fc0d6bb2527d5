package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.AirSpace;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.site.job.JobCrew;
import slabwright.units.Length;
import slabwright.work.air.AirScreening;
import slabwright.work.air.AirVolume;
import slabwright.work.air.ConcentrationCurve;
import slabwright.work.air.VapourStep;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.StepWait;
import slabwright.work.days.WetFilm;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;

/** What is dated can be carried out: whatever the floor, its colours, its air and its masks are. */
class CarriedOutProperties {
  private static final String HALL = "reading-hall";
  private static final Site SITE = WorkSamples.solventHall();

  /** 500 ppm of 2.5 %: acetone's 15-minute limit as a share of its explosive limit. */
  private static final double SHORT_TERM = 0.02;

  private static final String MASK = "half mask, organic vapour";

  private static final double EIGHT_HOURS = 0.01;

  @Property(tries = 200)
  void two_stencils_of_one_inlay_never_lie_at_the_same_time(
      @ForAll @IntRange(min = 1, max = 5) int colours,
      @ForAll @IntRange(min = 1, max = 4) int people,
      @ForAll @DoubleRange(min = 0.01, max = 2) double openings) {
    WorkPlan plan = plan(40_000, colours, openings, true, true, people);
    DayPlan days = plan.outlook().order().maybe().orElseThrow();
    Map<Integer, List<ScheduledStep>> byStencil = new HashMap<>();
    days.steps().stream()
        .filter(s -> !s.task().type().stencils().isEmpty())
        .forEach(
            s -> {
              assertThat(s.task().type().stencils()).hasSize(1);
              byStencil
                  .computeIfAbsent(s.task().type().stencils().get(0), i -> new ArrayList<>())
                  .add(s);
            });
    assertThat(byStencil).hasSize(colours);
    for (int i = 0; i < colours; i++) {
      List<ScheduledStep> cycle = byStencil.get(i);
      assertThat(cycle).extracting(s -> s.task().type().kind()).startsWith(StepKind.LAY_STENCIL);
      assertThat(cycle).extracting(s -> s.task().type().kind()).endsWith(StepKind.PULL_UP_STENCIL);
      assertThat(cycle.get(1).task().type().kind()).isEqualTo(StepKind.PRESS_EDGES);
      assertThat(cycle.get(1).end().toLocalDate())
          .as("pressed on the day it is laid")
          .isEqualTo(cycle.get(0).start().toLocalDate());
      if (i > 0) {
        ScheduledStep before = byStencil.get(i - 1).get(byStencil.get(i - 1).size() - 1);
        assertThat(cycle.get(0).start()).isAfterOrEqualTo(before.end());
      }
    }
  }

  @Property(tries = 200)
  void no_dated_step_is_in_vapour_above_the_entry_rule_nor_before_its_drying(
      @ForAll @DoubleRange(min = 0, max = 60_000) double air,
      @ForAll @IntRange(min = 1, max = 3) int colours,
      @ForAll @DoubleRange(min = 0.01, max = 6) double openings,
      @ForAll boolean masked,
      @ForAll boolean dyed) {
    WorkPlan plan = plan(air, colours, openings, masked, dyed, 3);
    if (!plan.days().isKnown()) {
      assertThat(plan.outlook().canStart()).isFalse();
      return;
    }
    DayPlan days = plan.days().maybe().orElseThrow();
    for (ScheduledStep s : days.steps()) {
      for (StepWait w : s.task().waits()) {
        ScheduledStep before = days.step(w.after()).orElseThrow();
        assertThat(s.start()).isAfterOrEqualTo(before.end().plus(w.atLeast()));
      }
    }
    breathable(plan, days);
  }

  /** Few tries, for two floors are planned at each; the search itself has SparkProperties. */
  @Property(tries = 40)
  void no_dust_falls_into_a_wet_coat_here_or_behind_a_shared_door(
      @ForAll @IntRange(min = 1, max = 4) int people,
      @ForAll @IntRange(min = 0, max = 4) int hallCoats,
      @ForAll boolean solvent) {
    Site site = solvent ? SITE : WorkSamples.tramHall();
    FloorArea hall = site.area(HALL).orElseThrow();
    List<Finish.Coat> coats = hall.finish().coats();
    FloorArea less =
        hall.withFinish(
            new Finish(
                hall.finish().exposure(), coats.subList(0, Math.min(hallCoats, coats.size()))));
    Site some =
        site.withAreas(site.areas().stream().map(a -> a.id().equals(HALL) ? less : a).toList());
    WorkPlan plan =
        WorkSamples.planSmall(some, WorkSamples.bookWith("crew", "", "people", "" + people));
    DayPlan days = plan.outlook().order().maybe().orElseThrow();
    for (ScheduledStep laid : days.steps()) {
      WetFilm film = laid.task().air().wet();
      boolean coat = laid.task().type().coat().isPresent();
      assertThat(film.areas()).hasSize(coat ? 2 : 0);
      assertThat(days.steps())
          .filteredOn(s -> s.task().type().air() instanceof AirEffect.Dust)
          .filteredOn(s -> film.areas().contains(s.task().type().areaId()))
          .flatExtracting(ScheduledStep::spans)
          .noneMatch(
              s ->
                  s.start().isBefore(laid.end().plus(film.after()))
                      && laid.start().isBefore(s.end()));
    }
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void no_dust_falls_into_a_wet_coat_here_or_behind_a_shared_door_of_200(
      @ForAll @IntRange(min = 1, max = 4) int people,
      @ForAll @IntRange(min = 0, max = 4) int hallCoats,
      @ForAll boolean solvent) {
    no_dust_falls_into_a_wet_coat_here_or_behind_a_shared_door(people, hallCoats, solvent);
  }

  /** The curve worked out anew from where the dated steps lie. */
  private static void breathable(WorkPlan plan, DayPlan days) {
    AirScreening asked =
        plan.area(HALL).orElseThrow().air().maybe().orElseThrow().screening().orElseThrow();
    List<VapourStep> laid = new ArrayList<>();
    for (VapourStep v : asked.steps()) {
      at(days, v.type())
          .ifPresent(
              s ->
                  laid.add(
                      new VapourStep(
                          v.type(),
                          v.name(),
                          minute(days, s),
                          v.minutes(),
                          v.fastest(),
                          v.liquids())));
    }
    Statistics.label("solvent steps dated").collect(laid.isEmpty() ? "none" : "some");
    if (laid.isEmpty()) {
      return;
    }
    AirVolume space = asked.space();
    ConcentrationCurve lel = curve(asked, laid);
    ConcentrationCurve usual =
        curve(
            asked,
            laid.stream()
                .map(v -> new VapourStep(v.type(), v.name(), v.from(), v.minutes(), v.liquids()))
                .toList());
    Map<LocalDate, Double> shift = new HashMap<>();
    for (ScheduledStep s : days.steps()) {
      if (!s.task().type().isOn(HALL)) {
        continue;
      }
      double from = minute(days, s);
      double minutes = Math.min(480, s.task().length().toMinutes());
      double low = lel.peakBetween(from, from + minutes) * space.layerFactor();
      boolean worn = !s.task().air().protection().isEmpty();
      assertThat(low).as(s.task().id()).isLessThan(worn ? 0.1 : SHORT_TERM);
      if (!worn && minutes > 0) {
        double mean = usual.average(from, from + minutes) * space.layerFactor() / EIGHT_HOURS;
        shift.merge(s.start().toLocalDate(), mean * minutes / 480, Double::sum);
      }
    }
    assertThat(shift.values()).allMatch(v -> v <= 1 + 1e-6);
  }

  private static ConcentrationCurve curve(AirScreening asked, List<VapourStep> laid) {
    AirScreening real =
        AirScreening.of(
            laid,
            asked.space(),
            asked.stated().map(f -> f.airflow()),
            asked.mixing(),
            asked.celsius());
    return real.stated().orElse(real.closed()).lel();
  }

  private static Optional<ScheduledStep> at(DayPlan days, StepType type) {
    return days.steps().stream().filter(s -> s.task().type().equals(type)).findFirst();
  }

  private static double minute(DayPlan days, ScheduledStep s) {
    return Duration.between(days.firstDay().atTime(days.hours().from()), s.start()).toMinutes();
  }

  /** A hall of 40 m² with one inlay of so many colours, each of so many square metres. */
  private static WorkPlan plan(
      double air, int colours, double openings, boolean masked, boolean dyed, int people) {
    FloorArea hall = SITE.area(HALL).orElseThrow();
    List<Finish.Coat> coats =
        hall.finish().coats().stream()
            .filter(c -> dyed || !c.product().equals("base-dye"))
            .toList();
    FloorArea aired =
        hall.withAir(new AirSpace(Optional.of(Length.mm(3500)), air, 2))
            .withFinish(new Finish(hall.finish().exposure(), coats));
    List<JobCrew.Person> persons =
        IntStream.range(0, people)
            .mapToObj(i -> new JobCrew.Person("hand", "P" + i, i < 2 ? MASK : ""))
            .toList();
    JobCrew crew = new JobCrew("", masked ? persons : List.of(), new TreeMap<>());
    Site site = SITE.withAreas(List.of(aired)).withJob(SITE.job().withCrew(crew));
    List<InlayTakeoff.StencilDye> dyes =
        IntStream.range(0, colours)
            .mapToObj(
                i ->
                    new InlayTakeoff.StencilDye(
                        "#00000" + i,
                        "inlay-dye",
                        openings * 1e6,
                        9000,
                        4e6,
                        3e6,
                        Said.text("colour " + i)))
            .toList();
    InlayTakeoff inlay =
        new InlayTakeoff(
            "heron",
            "Heron",
            4e6 * colours,
            new InlayTakeoff.VinylFromRoll(9000, 1200),
            9000 * colours,
            3e6,
            dyes);
    AreaTakeoff floor =
        new AreaTakeoff(
            aired,
            Region.of(Ring.rectangle(0, 0, 8000, 5000)),
            26_000,
            Optional.of(Vec.ZERO),
            WorkSamples.prep(HALL),
            List.of(),
            List.of(inlay));
    return WorkPlan.of(
        site, List.of(floor), WorkSamples.bookWith("crew", "", "people", "" + people));
  }
}
