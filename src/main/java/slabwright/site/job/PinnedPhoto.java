package slabwright.site.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A photo pinned to a place of a floor. It outlives what it is pinned to: a photo of a mark that
 * was taken away is still evidence.
 *
 * @param file path relative to the plan's folder and inside it
 * @param area id of the floor area
 * @param on the day it was taken, when known
 * @param phase whether it shows the place before or after the work, when that is known
 */
@RecordBuilder
public record PinnedPhoto(
    String file, String area, Pin pin, Optional<LocalDate> on, String note, Optional<Phase> phase)
    implements PinnedPhotoBuilder.With {
  /** What a photo is pinned to. */
  public sealed interface Pin {}

  /** A mark, by its id. */
  public record OnMark(String mark) implements Pin {}

  /** A corner of the outline, by its index from 0. */
  public record OnCorner(int corner) implements Pin {}

  /** When a photo was taken, seen from the work. */
  public enum Phase {
    BEFORE,
    AFTER
  }

  /** The same photo pinned elsewhere. */
  public PinnedPhoto on(Pin v) {
    return withPin(v);
  }
}
