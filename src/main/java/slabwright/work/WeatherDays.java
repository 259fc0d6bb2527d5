package slabwright.work;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import slabwright.site.Site;
import slabwright.site.job.DayForecast;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.work.book.Figure;
import slabwright.work.book.Laying;
import slabwright.work.book.TemperatureTable;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.WorkStep;
import slabwright.work.rule.DewPoint;
import slabwright.work.step.StepKind;

/**
 * On which days the forecast forbids a coat outdoors, and how long it dries then. Its limits hold
 * until it is dry, the night that follows included: the lowest temperatures of the day and of the
 * days until then count, and so does rain. A day on which it dries longer than its next coat may
 * wait is forbidden too.
 */
record WeatherDays(Site site, AreaTakeoff floor, List<CoatPlan> coats) {
  /** From so much chance of rain on, in %, it counts as rain: common practice, no source. */
  static final double RAIN = 20;

  /** The surface has to be so much warmer than the dew point, °C. */
  private static final double OVER_DEW_POINT = 3;

  /** When a coat is done at the latest, so that it is known on which days it dries. */
  private static final LocalTime LATEST = LocalTime.of(16, 0);

  private static final LocalTime LAST_MINUTE = LocalTime.of(23, 59);

  /** Whether the forecast says anything of this floor's coats. */
  boolean count() {
    return floor.isOutdoors()
        && site.start()
            .filter(t -> forecast().stream().anyMatch(d -> !d.on().isBefore(t.toLocalDate())))
            .isPresent();
  }

  private List<DayForecast> forecast() {
    return site.job().forecast();
  }

  private Optional<DayForecast> on(LocalDate day) {
    return forecast().stream().filter(d -> d.on().equals(day)).findFirst();
  }

  private Optional<CoatPlan> coat(WorkStep step) {
    boolean laid = step.type().kind() == StepKind.COAT || step.type().kind() == StepKind.MIST_COAT;
    return step.type()
        .coat()
        .filter(n -> laid)
        .flatMap(n -> coats.stream().filter(c -> c.job().place() == n.place()).findFirst());
  }

  /** The same steps, each coat kept off the days that are forbidden for it. */
  List<WorkStep> keptOff(List<WorkStep> steps) {
    return count()
        ? steps.stream()
            .map(
                s ->
                    coat(s)
                        .map(c -> s.withNotOn(forbidden(s, c, latest(s, steps)).keySet()))
                        .orElse(s))
            .toList()
        : steps;
  }

  /** Coats for which the forecast has no day. */
  List<HeldStep> held(List<WorkStep> steps) {
    List<HeldStep> held = new ArrayList<>();
    if (count()) {
      for (WorkStep s : steps) {
        coat(s).flatMap(c -> held(s, c, latest(s, steps))).ifPresent(held::add);
      }
    }
    return held;
  }

  /** How long after its end what follows a coat may begin at the latest; empty for any time. */
  private static Optional<Duration> latest(WorkStep coat, List<WorkStep> steps) {
    return steps.stream()
        .flatMap(s -> s.waits().stream())
        .filter(w -> w.after().equals(coat.id()))
        .flatMap(w -> w.atMost().stream())
        .min(Duration::compareTo);
  }

  private Optional<HeldStep> held(WorkStep step, CoatPlan coat, Optional<Duration> latest) {
    LocalDate start = site.start().orElseThrow().toLocalDate();
    Map<LocalDate, Message> bad = forbidden(step, coat, latest);
    boolean some =
        forecast().stream()
            .map(DayForecast::on)
            .anyMatch(d -> !d.isBefore(start) && !bad.containsKey(d));
    Optional<Message> first =
        bad.entrySet().stream()
            .filter(e -> !e.getKey().isBefore(start))
            .map(Map.Entry::getValue)
            .findFirst();
    return some
        ? Optional.empty()
        : first.map(
            why ->
                new HeldStep(
                    step.type().areaId(),
                    step.id(),
                    why,
                    List.of(
                        Message.of("work.held.later-forecast"),
                        Message.of("work.held.other-range"))));
  }

  /** Every day of the forecast on which the coat is forbidden, in order, with the reason. */
  private Map<LocalDate, Message> forbidden(
      WorkStep step, CoatPlan coat, Optional<Duration> latest) {
    Map<LocalDate, Message> bad = new LinkedHashMap<>();
    forecast().stream()
        .map(DayForecast::on)
        .sorted()
        .forEach(d -> against(step, coat, latest, d).ifPresent(why -> bad.put(d, why)));
    return bad;
  }

  private Optional<Message> against(
      WorkStep step, CoatPlan coat, Optional<Duration> latest, LocalDate day) {
    Figure<TemperatureTable> recoat = coat.product().drying().recoatFrom();
    LocalDateTime laid = LATEST.atDate(day);
    Figure<Duration> dries = recoat.flatMap(t -> dries(t, laid).orElse(coat.at(recoat)));
    long wet = laid.plus(dry(coat, laid)).toLocalDate().toEpochDay() - day.toEpochDay();
    List<DayForecast> drying =
        day.datesUntil(day.plusDays(Math.max(0, wet) + 1)).flatMap(d -> on(d).stream()).toList();
    List<DayForecast> nights =
        day.datesUntil(day.plusDays(Math.max(1, wet) + 1)).flatMap(d -> on(d).stream()).toList();
    DayForecast today = on(day).orElseThrow();
    return cold(step, coat.product().laying(), nights, day)
        .or(() -> hot(step, coat.product().laying(), today))
        .or(() -> rain(step, drying))
        .or(() -> humid(step, today))
        .or(() -> dew(step, today, nights))
        .or(() -> noTime(step, day, dries))
        .or(() -> latest.flatMap(l -> tooSlow(step, day, recoat, l)))
        .or(() -> tooWarm(step, coat, today));
  }

  private static Optional<Message> noTime(WorkStep step, LocalDate day, Figure<Duration> dries) {
    return dries instanceof Figure.Refused<Duration> refused
        ? Optional.of(Message.of("work.weather.no-time", step.name(), day, refused.why()))
        : Optional.empty();
  }

  /**
   * Dry only when the next coat would come too late: a limit of the data sheet is never drawn out.
   * Reckoned to the day's last minute, so that it holds for whatever hour the coat ends at.
   */
  private Optional<Message> tooSlow(
      WorkStep step, LocalDate day, Figure<TemperatureTable> recoat, Duration latest) {
    return recoat
        .maybe()
        .flatMap(t -> dries(t, day.atTime(LAST_MINUTE)))
        .flatMap(Figure::maybe)
        .map(StepSequence::minutes)
        .filter(dry -> latest.compareTo(dry) < 0)
        .map(dry -> Message.of("work.weather.too-slow", step.name(), day, said(dry), said(latest)));
  }

  private static Message said(Duration d) {
    return Message.of("work.step-validator.hours-and-minutes", d.toHours(), d.toMinutesPart());
  }

  /** By the high of the day the book must know how long an edge stays wet, and a batch lasts. */
  private static Optional<Message> tooWarm(WorkStep step, CoatPlan coat, DayForecast today) {
    if (today.highC().isEmpty()) {
      return Optional.empty();
    }
    double high = today.highC().getAsDouble();
    List<Figure<TemperatureTable>> tables = new ArrayList<>();
    if (coat.isRolled()) {
      tables.add(coat.product().laying().wetEdge());
    }
    if (coat.mixed().isPresent()) {
      tables.add(coat.product().mixing().workingTime());
    }
    return tables.stream()
        .map(table -> table.flatMap(t -> t.at(high)))
        .flatMap(f -> f instanceof Figure.Refused<Duration> r ? Stream.of(r.why()) : Stream.of())
        .findFirst()
        .map(why -> Message.of("work.weather.no-edge", step.name(), today.on(), why));
  }

  /** How long its limits hold. */
  private Duration dry(CoatPlan coat, LocalDateTime laid) {
    Duration recoat = longest(coat, coat.product().drying().recoatFrom(), laid);
    Duration traffic = longest(coat, coat.product().drying().lightTraffic(), laid);
    return recoat.compareTo(traffic) > 0 ? recoat : traffic;
  }

  /** The longest that the book knows where it says nothing at that temperature. */
  private Duration longest(CoatPlan coat, Figure<TemperatureTable> table, LocalDateTime laid) {
    Duration most = table.maybe().map(TemperatureTable::longest).orElse(Duration.ZERO);
    return table.flatMap(t -> dries(t, laid).orElse(coat.at(table))).maybe().orElse(most);
  }

  /**
   * How long something takes from a time on: at the lowest of the days until then, for the surface
   * is taken as cold as the air gets; empty where no low is forecast for the first of them.
   */
  Optional<Figure<Duration>> dries(TemperatureTable table, LocalDateTime from) {
    LocalDate day = from.toLocalDate();
    OptionalDouble low = lowest(on(day).stream().toList());
    Optional<Figure<Duration>> time = Optional.empty();
    boolean colder = low.isPresent();
    while (colder) {
      Figure<Duration> next = table.at(low.getAsDouble());
      time = Optional.of(next);
      LocalDate last = from.plus(next.maybe().orElse(table.longest())).toLocalDate();
      OptionalDouble until =
          lowest(day.datesUntil(last.plusDays(1)).flatMap(d -> on(d).stream()).toList());
      colder = until.getAsDouble() < low.getAsDouble();
      low = until;
    }
    return time;
  }

  /** How long the next step waits for a coat that ends then; empty where no forecast says. */
  Optional<Duration> opens(WorkStep step, LocalDateTime end) {
    return count()
        ? coat(step)
            .flatMap(c -> c.product().drying().recoatFrom().maybe())
            .flatMap(t -> dries(t, end))
            .flatMap(Figure::maybe)
        : Optional.empty();
  }

  private static OptionalDouble lowest(List<DayForecast> days) {
    return days.stream().map(DayForecast::lowC).flatMapToDouble(OptionalDouble::stream).min();
  }

  private Optional<Message> cold(
      WorkStep step, Laying laying, List<DayForecast> nights, LocalDate day) {
    OptionalDouble low = lowest(nights);
    return laying
        .coldest()
        .maybe()
        .filter(limit -> low.isPresent() && low.getAsDouble() < limit)
        .map(
            limit ->
                Message.of(
                    "work.weather.cold", step.name(), day, text(low.getAsDouble()), text(limit)));
  }

  private Optional<Message> hot(WorkStep step, Laying laying, DayForecast today) {
    OptionalDouble high = today.highC();
    return laying
        .hottest()
        .maybe()
        .filter(limit -> high.isPresent() && high.getAsDouble() > limit)
        .map(
            limit ->
                Message.of(
                    "work.weather.hot",
                    step.name(),
                    today.on(),
                    text(high.getAsDouble()),
                    text(limit)));
  }

  private static Optional<Message> rain(WorkStep step, List<DayForecast> drying) {
    return drying.stream()
        .filter(d -> d.rain().orElse(0) >= RAIN)
        .findFirst()
        .map(
            d ->
                Message.of("work.weather.rain", step.name(), d.on(), d.rain().getAsDouble(), RAIN));
  }

  private static Optional<Message> humid(WorkStep step, DayForecast today) {
    double humidity = today.humidity().orElse(0);
    return humidity > DewPoint.HIGHEST_HUMIDITY
        ? Optional.of(Message.of("work.weather.humid", step.name(), today.on(), humidity))
        : Optional.empty();
  }

  /** The surface is taken as cold as the air gets; the dew point is that of the day's mean. */
  private Optional<Message> dew(WorkStep step, DayForecast today, List<DayForecast> nights) {
    boolean said =
        today.lowC().isPresent() && today.highC().isPresent() && today.humidity().orElse(0) > 0;
    if (!said) {
      return Optional.empty();
    }
    double mean = (today.lowC().getAsDouble() + today.highC().getAsDouble()) / 2;
    double dew = DewPoint.of(mean, today.humidity().getAsDouble());
    double low = lowest(nights).orElseThrow();
    return low - dew >= OVER_DEW_POINT
        ? Optional.empty()
        : Optional.of(
            Message.of("work.weather.dew", step.name(), today.on(), text(low), text(dew)));
  }

  /** What has to be checked on the days that a plan gives the coats. */
  List<DayCheck> checks(DayPlan days, boolean dated) {
    List<DayCheck> all = new ArrayList<>();
    if (floor.isOutdoors()) {
      days.steps().stream()
          .filter(s -> s.task().type().isOn(floor.area().id()))
          .filter(s -> coat(s.task()).isPresent())
          .forEach(
              s ->
                  Stream.of(check(s, dated), potLife(s, dated))
                      .flatMap(Optional::stream)
                      .forEach(m -> all.add(new DayCheck(floor.area().id(), s.task().id(), m))));
    }
    return all;
  }

  private Optional<Message> check(ScheduledStep s, boolean dated) {
    LocalDate day = s.start().toLocalDate();
    Optional<DayForecast> today = dated ? on(day) : Optional.empty();
    Optional<DayForecast> night = dated ? on(day.plusDays(1)) : Optional.empty();
    if (today.isEmpty()) {
      return Optional.of(Message.of("work.weather.no-forecast", s.task().name()));
    }
    if (night.flatMap(WeatherDays::low).isEmpty()) {
      return Optional.of(Message.of("work.weather.night-unknown", s.task().name()));
    }
    DayForecast d = today.get();
    boolean whole =
        d.lowC().isPresent()
            && d.highC().isPresent()
            && d.humidity().isPresent()
            && d.rain().isPresent();
    return whole
        ? Optional.empty()
        : Optional.of(Message.of("work.weather.incomplete", s.task().name(), day));
  }

  /** Batches are as large as the readings let them be; a warmer day leaves less time for each. */
  private Optional<Message> potLife(ScheduledStep s, boolean dated) {
    OptionalDouble high =
        dated
            ? on(s.start().toLocalDate()).map(DayForecast::highC).orElse(OptionalDouble.empty())
            : OptionalDouble.empty();
    Optional<Double> reckoned =
        coat(s.task()).filter(c -> c.mixed().isPresent()).flatMap(c -> c.job().warmer().maybe());
    return reckoned
        .filter(c -> high.orElse(c) > c)
        .map(
            c ->
                Message.of(
                    "work.weather.pot-life",
                    s.task().name(),
                    text(c),
                    s.start().toLocalDate(),
                    text(high.getAsDouble())));
  }

  private static Optional<Double> low(DayForecast d) {
    return d.lowC().isPresent() ? Optional.of(d.lowC().getAsDouble()) : Optional.empty();
  }

  private String text(double celsius) {
    return QuantityFormat.temperature(celsius, site.units());
  }
}
