package slabwright.sheets.packet.crew;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import slabwright.sheets.packet.BriefStop;
import slabwright.sheets.packet.HeldLines;
import slabwright.sheets.packet.LeftVapour;
import slabwright.sheets.packet.MeterLines;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.SolventNight;
import slabwright.sheets.page.TimeFormat;
import slabwright.site.FloorArea;
import slabwright.site.job.JobCrew;
import slabwright.units.Message;
import slabwright.units.QuarterHour;
import slabwright.words.Words;
import slabwright.work.MeterWatch;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;
import slabwright.work.stop.JobStop;

/** The words of every day of the crew. */
final class CrewDayTexts {
  private static final int LOOK_AHEAD = 1;

  private final PacketContents job;
  private final Words words;
  private final WorkPlan plan;
  private final TimeFormat times;
  private final CrewStepWords steps;
  private final List<CrewDay> days;
  private final Optional<DayPlan> planned;
  private final Optional<PersonRota> rota;

  CrewDayTexts(PacketContents job) {
    this.job = job;
    this.words = job.words();
    this.plan = job.work();
    this.times = new TimeFormat(job.words());
    this.steps = new CrewStepWords(job, times, plan.outlook().canStart());
    this.days = CrewDays.of(plan);
    this.planned = CrewDays.days(plan);
    this.rota = planned.map(PersonRota::of);
  }

  /** Whether rows tell when they start; else how long they take. */
  boolean isTimed() {
    return plan.outlook().canStart();
  }

  List<CrewDay> days() {
    return days;
  }

  /** What stands against the job, in full; empty where nothing does. */
  List<String> alerts() {
    Set<String> all = new LinkedHashSet<>();
    if (!plan.outlook().canStart()) {
      all.add(words.say("sheets.crew-day.do-not-start"));
      plan.outlook().cannotStart().forEach(m -> all.add(words.say(m) + "."));
    }
    plan.areas().stream()
        .flatMap(a -> a.stops().stream())
        .filter(JobStop::isOpen)
        .filter(s -> !plan.outlook().cannotStart().contains(s.reason()))
        .forEach(s -> all.add(words.say("sheets.crew-day.open-question", s.reason())));
    List<String> held = new HeldLines(plan, words).names();
    if (!held.isEmpty()) {
      all.add(words.say("sheets.crew-day.held", String.join("; ", held)));
    }
    return List.copyOf(all);
  }

  /** The same in two lines where the job can't start: its reasons stand in full on one page. */
  List<String> briefAlerts() {
    return plan.outlook().canStart() ? alerts() : new BriefStop(plan, words).lines();
  }

  /** Every day; where the work can't be put in order, one page that says why. */
  List<CrewDayText> all() {
    return days.isEmpty() ? List.of(none()) : days.stream().map(this::text).toList();
  }

  /** No day, no order: what stands against the job, why, and the disclaimer. */
  private CrewDayText none() {
    List<String> why = new ArrayList<>(alerts());
    why.add(words.line(plan.outlook().order().text(d -> "")));
    return new CrewDayText(
        words.say("sheets.crew-day.no-days"),
        job.site().name(),
        why.stream().filter(w -> !w.isBlank()).toList(),
        List.of(),
        List.of(),
        List.of(words.say("sheets.crew-day.ask")),
        List.of(),
        List.of(words.say("sheets.crew-day.notice", WorkPlan.NOTICE, plan.book().origin())));
  }

  CrewDayText text(CrewDay day) {
    CrewCautions cautions = new CrewCautions(job, day);
    boolean known = plan.outlook().canStart();
    return new CrewDayText(
        known
            ? times.weekday(day.on().atStartOfDay(), plan.dated())
            : words.say("sheets.crew-day.in-order"),
        known
            ? words.say("sheets.crew-day.place", day.number(), days.size(), places(day))
            : places(day),
        alerts(),
        rows(day),
        cautions.all(),
        cautions.stops(),
        cautions.readings(),
        lookOut(day));
  }

  private static String places(CrewDay day) {
    return day.steps().stream()
        .map(s -> s.task().area())
        .filter(a -> !a.isBlank()) // unloading and packing are of the whole job
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private List<CrewDayText.Row> rows(CrewDay day) {
    List<CrewDayText.Row> rows = new ArrayList<>();
    boolean several = day.steps().stream().map(s -> s.task().area()).distinct().count() > 1;
    Optional<CrewDayText.Row> last = Optional.empty();
    Optional<CrewDay.Work> before = Optional.empty();
    for (CrewDay.Entry e : day.entries()) {
      if (e instanceof CrewDay.Work w) {
        CrewDayText.Row row = row(w, several);
        rows.add(
            isTimed() && row.followsAtOnce(last)
                ? row.at(words.say("sheets.crew-day.then"), about(before.orElse(w), w))
                : row);
        before = Optional.of(w);
        last = Optional.of(row);
      } else if (e instanceof CrewDay.Closed c) {
        rows.add(row(c));
      } else if (e instanceof CrewDay.Opening o) {
        rows.add(new CrewOpening(job, times).row(day, o));
      } else if (e instanceof CrewDay.Left l) {
        LeftVapour words = new LeftVapour(job, times);
        rows.add(
            new CrewDayText.Row(
                times.hour(l.span().start()),
                words.who(l.air()),
                words.order(l.air()),
                words.details(l.air()),
                false));
      }
    }
    return rows;
  }

  /** By the clock of who began the row before when it says so. */
  private String about(CrewDay.Work before, CrewDay.Work w) {
    LocalDateTime begun = before.span().start();
    return words.say(
        "sheets.crew-day.then-about",
        times.hourToFiveMinutes(
            QuarterHour.up(begun).plus(Duration.between(begun, w.span().start()))));
  }

  private CrewDayText.Row row(CrewDay.Work w, boolean several) {
    String what = steps.sentence(w);
    String area = w.first().step().task().area();
    return new CrewDayText.Row(
        isTimed() ? times.hour(w.span().start()) : takes(w),
        persons(w),
        several && !area.isBlank() ? words.say("sheets.crew-day.in-area", area, what) : what,
        details(w),
        false);
  }

  /** Without dates the row tells how long it takes, its waits between included. */
  private String takes(CrewDay.Work w) {
    Duration all = Duration.ZERO;
    for (int i = 0; i < w.parts().size(); i++) {
      WorkStep task = w.parts().get(i).step().task();
      all = all.plus(task.length());
      if (i > 0) {
        String before = w.parts().get(i - 1).step().task().id();
        all =
            all.plus(
                task.waits().stream()
                    .filter(x -> x.after().equals(before))
                    .map(StepWait::atLeast)
                    .max(Comparator.naturalOrder())
                    .orElse(Duration.ZERO));
      }
    }
    return times.works(all);
  }

  /**
   * With how long what follows it waits, for whoever is late follows the wait and not the clock.
   * With dates a coat that has a last moment too stands at the foot of the page.
   */
  private List<String> details(CrewDay.Work w) {
    List<String> lines = new ArrayList<>(steps.details(w));
    planned
        .filter(p -> isTimed())
        .flatMap(p -> new MeterMeanwhile(job, p).told(w))
        .ifPresent(lines::add);
    ScheduledStep done = w.last().step();
    if (!isTimed() || w.last().after().isEmpty()) {
      planned.map(DayPlan::steps).orElse(List.of()).stream()
          .flatMap(after -> after.task().waits().stream())
          .filter(x -> x.after().equals(done.task().id()) && !x.atLeast().isZero())
          .max(Comparator.comparing(StepWait::atLeast))
          .filter(x -> !isTimed() || x.atMost().isEmpty())
          .filter(x -> !new CrewSample(job, times, isTimed()).tells(w, x.atLeast()))
          .ifPresent(x -> wait(lines, rest(done, x)));
    }
    return lines;
  }

  /** Beside the last sentence of a dated row, where lines are dear. */
  private void wait(List<String> lines, String rest) {
    int last = lines.size() - 1;
    if (isTimed() && last >= 0 && lines.get(last).endsWith(".")) {
      lines.set(last, lines.get(last) + " " + rest);
    } else {
      lines.add(rest);
    }
  }

  /** The longest wait counts from the first stroke, the shortest from the last. */
  private String rest(ScheduledStep done, StepWait w) {
    String least = least(w.atLeast());
    return w.atMost().isPresent()
        ? words.say(
            "sheets.crew-day.waits-within",
            least,
            times.days(w.atMost().get().plus(done.task().length())))
        : words.say("sheets.crew-day.waits", least);
  }

  /** Under an hour in five minutes, for a quarter of an hour more is long then; never less. */
  private String least(Duration d) {
    long minutes = (d.toSeconds() + 5 * 60 - 1) / (5 * 60) * 5;
    return minutes < 60 ? words.say("sheets.crew-day.minutes", minutes) : times.wait(d);
  }

  private String persons(CrewDay.Work w) {
    Set<String> letters = new TreeSet<>();
    w.parts().forEach(p -> rota.ifPresent(r -> letters.addAll(r.letters(p.step().task().id()))));
    return String.join(", ", letters);
  }

  private CrewDayText.Row row(CrewDay.Closed c) {
    String area = job.site().area(c.air().area()).map(FloorArea::name).orElse(c.air().area());
    boolean everyone = c.air().limit().isForEveryone();
    return new CrewDayText.Row(
        times.hourBefore(c.span().start()),
        everyone ? words.say("sheets.crew-day.nobody") : words.say("sheets.crew-day.nobody-bare"),
        until(c, area),
        List.of(readFromDoor(c)),
        true);
  }

  /** By whom is known where the crew has somebody to spare. */
  private String readFromDoor(CrewDay.Closed c) {
    OptionalInt reader =
        planned.stream()
            .flatMap(p -> p.step(c.air().step()).map(s -> MeterWatch.of(p, s)).stream())
            .flatMapToInt(w -> w.person().stream())
            .findFirst();
    return reader.isPresent()
        ? words.say("sheets.crew-day.reads-from-door", new MeterLines(job).named(reader.getAsInt()))
        : words.say("sheets.crew-day.read-from-door");
  }

  private String until(CrewDay.Closed c, String area) {
    LocalDateTime end = c.span().end();
    return end.toLocalDate().equals(c.span().start().toLocalDate())
        ? words.say("sheets.crew-day.closed-until", area, times.hourOfAnyDay(end))
        : words.say(
            "sheets.crew-day.closed-until-day",
            area,
            times.hourOfAnyDay(end),
            times.weekday(end, plan.dated()));
  }

  /** Tomorrow's first work, coats that must not be missed, and the weather. */
  private List<String> lookOut(CrewDay day) {
    List<String> lines = new ArrayList<>();
    int next = day.number();
    if (next < days.size()) {
      CrewDay then = days.get(next);
      String first =
          then.work().stream()
              .limit(LOOK_AHEAD)
              .map(steps::sentence)
              .collect(Collectors.joining("; "));
      lines.add(
          words.say(
              "sheets.crew-day.next",
              times.weekday(then.on().atStartOfDay(), plan.dated()),
              first));
      if (plan.dated()) {
        new CrewForecast(job).of(then.on()).ifPresent(lines::add);
      }
    } else if (isTimed()) {
      lines.add(words.say("sheets.crew-day.last"));
    }
    if (isTimed()) {
      lines.addAll(windows(day));
    }
    // between two days of solvent too: its cans stand there that night
    boolean solvent =
        days.subList(0, next).stream().anyMatch(this::isWithSolvent)
            && days.subList(next - 1, days.size()).stream().anyMatch(this::isWithSolvent);
    if (isTimed() && solvent && next < days.size()) {
      new SolventNight(job).brief().ifPresent(lines::add);
    }
    if (next == days.size()) {
      lines.add(words.say("sheets.crew-day.notice", WorkPlan.NOTICE, plan.book().origin()));
    }
    return lines;
  }

  private boolean isWithSolvent(CrewDay day) {
    return day.steps().stream().anyMatch(s -> MeterWatch.isAskedFor(plan, s.task().type()));
  }

  /** Coats of today whose next coat has a last moment. */
  private List<String> windows(CrewDay day) {
    List<String> lines = new ArrayList<>();
    for (ScheduledStep done : day.steps()) {
      for (ScheduledStep after : planned.map(DayPlan::steps).orElse(List.of())) {
        after.task().waits().stream()
            .filter(w -> w.after().equals(done.task().id()) && w.atMost().isPresent())
            .findFirst()
            .ifPresent(w -> lines.add(window(done, after, w)));
      }
    }
    return lines;
  }

  private String window(ScheduledStep done, ScheduledStep after, StepWait w) {
    LocalDateTime opens = KeepOutPeriod.next(done, after, w);
    LocalDateTime shuts = done.end().plus(w.atMost().orElseThrow());
    Message from = moment(opens, times.hourOfAnyDay(opens));
    Message to = moment(shuts, times.hourBeforeOfAnyDay(shuts));
    return after.task().abrading().isPresent()
        ? words.say("sheets.crew-day.window-abrade", after.task().name(), from, to)
        : words.say("sheets.crew-day.window", after.task().name(), from, to);
  }

  private Message moment(LocalDateTime t, String hour) {
    return Message.of("sheets.crew-day.moment", times.weekday(t, plan.dated()), hour);
  }

  /** Who the letters are, where the plan names them; else an empty sentence. */
  String persons() {
    List<JobCrew.Person> named = job.site().job().crew().persons();
    List<String> all = new ArrayList<>();
    for (int i = 0; i < named.size(); i++) {
      JobCrew.Person p = named.get(i);
      String name = p.name().isBlank() ? p.role() : p.name();
      if (!name.isBlank()) {
        all.add(words.say("sheets.crew-day.person", PersonRota.letter(i), name));
      }
    }
    return String.join(", ", all);
  }
}
