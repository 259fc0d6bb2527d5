package slabwright.work.book;

/**
 * How the shop moves air.
 *
 * @param mixing the factor K: 1 is perfect mixing, 10 is bad
 * @param airflow m³/min of fresh air the shop's own fans move; 0 is a legal answer
 */
public record AirHabits(Figure<Double> mixing, Figure<Double> airflow) {
  static AirHabits read(BookSection s) {
    return new AirHabits(
        s.number("mixing factor", Dimension.NUMBER), s.number("fresh air", Dimension.AIRFLOW));
  }
}
