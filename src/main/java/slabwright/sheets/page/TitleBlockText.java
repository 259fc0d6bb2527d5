package slabwright.sheets.page;

import java.time.LocalDate;
import java.util.Locale;

/**
 * What every title block says beside its own sheet.
 *
 * @param site the site's name
 * @param note one line under it, such as that it is invented
 * @param release number of the release, 0 for a draft
 * @param date the day the sheets were made
 */
public record TitleBlockText(String site, String note, int release, LocalDate date) {
  private static final java.time.format.DateTimeFormatter DAY =
      java.time.format.DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

  String releaseWords() {
    return release == 0 ? "draft" : Integer.toString(release);
  }

  String dateWords() {
    return DAY.format(date);
  }
}
