package slabwright.sheets.packet.crew;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * All words of one day of the crew, the same on paper and on a phone.
 *
 * @param title the day
 * @param place which day of how many, and where
 * @param alerts what stands against the job, first of all and in red
 * @param rows in order
 * @param cautions five, what kills first on top
 * @param stops when to stop at once
 * @param readings what is written down, each with a line to write on
 * @param lookOut tomorrow, and what has to be known for it
 */
record CrewDayText(
    String title,
    String place,
    List<String> alerts,
    List<Row> rows,
    List<String> cautions,
    List<String> stops,
    List<String> readings,
    List<String> lookOut) {
  CrewDayText {
    alerts = List.copyOf(alerts);
    rows = List.copyOf(rows);
    cautions = List.copyOf(cautions);
    stops = List.copyOf(stops);
    readings = List.copyOf(readings);
    lookOut = List.copyOf(lookOut);
  }

  /**
   * One thing to do.
   *
   * @param time when it starts; how long it takes where the job has no dates
   * @param who letters of the persons
   * @param what in one sentence
   * @param details tools, times of batches and where it is shown, a line each
   * @param out whether people stay out
   */
  record Row(String time, String who, String what, List<String> details, boolean out) {
    private static final Pattern LETTERS = Pattern.compile(", ");

    Row {
      details = List.copyOf(details);
    }

    /**
     * Whether the same people do it in the same quarter of an hour as the row before, and so after
     * it: nobody does both at once.
     */
    boolean followsAtOnce(Optional<Row> before) {
      return before
          .filter(b -> b.time.equals(time) && !b.out && !out)
          .filter(b -> LETTERS.splitAsStream(b.who).anyMatch(l -> !l.isBlank() && who.contains(l)))
          .isPresent();
    }

    /** The same with another word for when, and more of it above its details. */
    Row at(String when, String more) {
      return new Row(
          when, who, what, Stream.concat(Stream.of(more), details.stream()).toList(), out);
    }
  }
}
