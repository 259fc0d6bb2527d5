package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.TimeFormat;
import slabwright.words.Words;
import slabwright.work.days.ICalendarWriter;

/**
 * The crew's days for its calendar: the rows of the day pages with their times, so that no two
 * papers of one day differ; here the hours say which half of the day they are of.
 */
final class CrewCalendarText {
  private final Words words;
  private final TimeFormat times;
  private final CrewDayTexts texts;

  CrewCalendarText(PacketContents job) {
    this.words = job.words();
    this.times = new TimeFormat(job.words());
    this.texts = new CrewDayTexts(job);
  }

  List<ICalendarWriter.Day> days() {
    return texts.days().stream().map(d -> new ICalendarWriter.Day(d.on(), lines(d))).toList();
  }

  private List<String> lines(CrewDay day) {
    List<CrewDayText.Row> rows = texts.text(day).rows();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      CrewDayText.Row row = rows.get(i);
      lines.add(
          words.say(
              "sheets.crew-calendar.row", hour(row, day.entries().get(i)), row.who(), row.what()));
    }
    return lines;
  }

  private String hour(CrewDayText.Row row, CrewDay.Entry entry) {
    if (row.out()) {
      return times.hourBeforeOfAnyDay(entry.span().start());
    }
    boolean atOnce = row.time().equals(words.say("sheets.crew-day.then"));
    return atOnce ? row.time() : times.hourOfAnyDay(entry.span().start());
  }
}
