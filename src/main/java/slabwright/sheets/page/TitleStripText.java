package slabwright.sheets.page;

import java.time.LocalDate;
import java.util.Optional;
import slabwright.drawing.EncodedPicture;

/**
 * What every title strip says beside its own page.
 *
 * @param site the site's name
 * @param note one line under it, such as that it is invented
 * @param release number of the release, 0 for a draft
 * @param date the day the sheets were made
 * @param contractor whose sheet it is; empty when the plan does not say
 * @param phone of the contractor; may be empty
 * @param client who it is for; empty when the plan does not say
 * @param mark of the contractor, left of the name
 */
public record TitleStripText(
    String site,
    String note,
    int release,
    LocalDate date,
    String contractor,
    String phone,
    String client,
    Optional<Mark> mark) {
  /**
   * A contractor's mark.
   *
   * @param aspect its width over its height
   */
  public record Mark(EncodedPicture picture, double aspect) {}

  /** For a sheet of which no contractor is known. */
  public TitleStripText(String site, String note, int release, LocalDate date) {
    this(site, note, release, date, "", "", "", Optional.empty());
  }
}
