package slabwright.work;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slabwright.site.Site;
import slabwright.work.book.Crew;
import slabwright.work.book.Figure;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.SealerAdvice;
import slabwright.work.coat.SealerQuestions;
import slabwright.work.days.DayPlan;
import slabwright.work.days.DayPlanner;
import slabwright.work.days.DayTable;
import slabwright.work.days.Hours;
import slabwright.work.days.Planned;
import slabwright.work.days.Task;
import slabwright.work.prep.PrepPlan;
import slabwright.work.top.TopJob;

/** Plans one site; one use. First the steps, then their days, then the air along those days. */
final class WorkPlanner {
  /** A Monday, for a site without a start date. */
  private static final LocalDate ANY_MONDAY = LocalDate.of(2001, 1, 1);

  private final Site site;
  private final List<FloorWork> floors;
  private final ShopBook book;

  WorkPlanner(Site site, List<FloorWork> floors, ShopBook book) {
    this.site = site;
    this.floors = floors;
    this.book = book;
  }

  private record Draft(FloorWork floor, PrepPlan prep, List<TopJob> tops, CoatList coats) {}

  WorkPlan plan() {
    List<Draft> drafts =
        floors.stream()
            .map(f -> new Draft(f, PrepPlan.of(f.prep(), book), tops(f), CoatList.of(f, book)))
            .toList();
    Figure<List<Task>> tasks = tasks(drafts);
    Figure<DayPlan> first = tasks.flatMap(this::days);
    List<AreaWork> areas = drafts.stream().map(d -> area(d, first)).toList();
    Figure<List<Task>> shut =
        tasks.with(first, (t, d) -> t.stream().map(x -> KeepOuts.on(x, areas, d)).toList());
    Figure<DayPlan> days = first.with(shut, DayPlan::withTasks);
    return new WorkPlan(
        site,
        book,
        site.start().isPresent(),
        areas,
        shut,
        days,
        shut.with(days, (t, d) -> DayTable.of(d, t)));
  }

  private List<TopJob> tops(FloorWork f) {
    return f.tops().stream().map(t -> TopJob.of(t, f.area().finish().exposure(), book)).toList();
  }

  private Figure<List<Task>> tasks(List<Draft> drafts) {
    List<Figure<List<Task>>> lists = new ArrayList<>();
    for (Draft d : drafts) {
      lists.add(AreaTasks.of(d.floor(), d.prep(), d.tops(), d.coats().coats(), book));
      d.coats().unknown().forEach(id -> lists.add(Figure.missing("the product \"" + id + "\"")));
    }
    return Figure.all(lists).map(l -> l.stream().flatMap(List::stream).toList());
  }

  private AreaWork area(Draft d, Figure<DayPlan> days) {
    return new AreaWork(
        d.floor(),
        d.prep(),
        d.tops(),
        bags(d),
        d.coats().coats(),
        d.coats().unknown(),
        new AirWorker(d.floor(), d.coats().coats(), book.first(ProductKind.FILLER), days).work(),
        AreaNotes.of(d.floor(), d.coats().coats(), days.maybe(), book, site.units()),
        SealerAdvice.of(SealerQuestions.of(d.floor().area())));
  }

  private Figure<Integer> bags(Draft d) {
    Figure<Double> dust = d.prep().dust();
    for (TopJob top : d.tops()) {
      dust = top.passes().isEmpty() ? dust : dust.with(top.dust(), Double::sum);
    }
    return PrepPlan.bags(dust, book);
  }

  private Figure<DayPlan> days(List<Task> tasks) {
    return hours(book.crew()).flatMap(h -> placed(tasks, h));
  }

  private Figure<DayPlan> placed(List<Task> tasks, Hours hours) {
    LocalDateTime start = site.start().orElse(ANY_MONDAY.atTime(hours.from()));
    Map<String, LocalDateTime> notBefore = new HashMap<>();
    tasks.stream().filter(t -> t.waits().isEmpty()).forEach(t -> notBefore.put(t.id(), start));
    Planned planned = DayPlanner.plan(tasks, hours, start.toLocalDate(), notBefore);
    return planned instanceof Planned.Refused refused
        ? Figure.refused(refused.sentence())
        : Figure.known(((Planned.Days) planned).plan());
  }

  private record When(LocalTime from, Duration length) {}

  private record Week(When when, Set<DayOfWeek> days) {}

  private static Figure<When> fitting(When w) {
    return Hours.fits(w.from(), w.length())
        ? Figure.known(w)
        : Figure.refused(
            "a working day lasts an hour or more and ends by midnight; correct the crew's hours");
  }

  private static Figure<Hours> hours(Crew crew) {
    return crew.starts()
        .with(crew.day(), When::new)
        .flatMap(WorkPlanner::fitting)
        .with(crew.days(), Week::new)
        .with(crew.people(), (w, n) -> new Hours(n, w.when().from(), w.when().length(), w.days()));
  }
}
