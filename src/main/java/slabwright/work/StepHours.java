package slabwright.work;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Set;
import slabwright.units.Message;
import slabwright.work.book.Crew;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.days.WorkingWeek;

/** The time for steps: what a day's setting up, cleaning up and break leave of it. */
final class StepHours {
  private StepHours() {}

  private record When(LocalTime from, Duration length) {}

  private record Week(When when, Set<DayOfWeek> days) {}

  static Figure<WorkingWeek> of(ShopBook book) {
    Crew crew = book.crew();
    Duration before = book.setUp().daily().maybe().orElse(Duration.ZERO);
    Duration after = book.setUp().cleanUp().maybe().orElse(Duration.ZERO);
    return crew.starts()
        .with(crew.day(), (t, d) -> new When(t.plus(before), d.minus(before).minus(after)))
        .flatMap(StepHours::fitting)
        .with(crew.days(), Week::new)
        .with(
            crew.people(),
            (w, n) ->
                new WorkingWeek(n, w.when().from(), w.when().length(), w.days())
                    .resting(rest(book)));
  }

  private static Figure<When> fitting(When w) {
    return WorkingWeek.fits(w.from(), w.length())
        ? Figure.known(w)
        : Figure.refused(Message.of("work.work-planner.a-working-day-lasts-an"));
  }

  private static Duration rest(ShopBook book) {
    return book.setUp().breaks().maybe().orElse(Duration.ZERO);
  }

  /**
   * What can be laid in one go on a day. A coat is not left for the break: who lays it rests before
   * or after, and that takes of the day too.
   */
  static Figure<Duration> inOneGo(ShopBook book) {
    return of(book).map(WorkingWeek::inOneGo);
  }
}
