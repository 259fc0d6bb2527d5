package slabwright.work.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;

/**
 * Where the ground floor will look different, and what dye does there. Common practice: a tight
 * cream takes less dye, an open paste more.
 */
public record ExposureChange(Message zone, Message looks, Message dye) {

  static List<ExposureChange> of(PrepParameters floor) {
    List<ExposureChange> changes = new ArrayList<>();
    floor.zones().forEach(z -> of(z.name(), z.kind()).ifPresent(changes::add));
    return List.copyOf(changes);
  }

  private static Optional<ExposureChange> of(Message name, PrepZone.Kind kind) {
    return switch (kind) {
      case OLD_CONCRETE -> Optional.empty();
      case TRENCH_PROUD ->
          Optional.of(
              new ExposureChange(
                  name,
                  Message.of("work.exposure-change.ground-deeper-than-the-old"),
                  Message.of("work.exposure-change.more-stone-takes-less-dye")));
      case TRENCH_LOW ->
          Optional.of(
              new ExposureChange(
                  name,
                  Message.of("work.exposure-change.filled-up-no-aggregate-shows"),
                  Message.of("work.exposure-change.filler-takes-little-dye-or")));
      case TRENCH_FLUSH ->
          Optional.of(
              new ExposureChange(
                  name,
                  Message.of("work.exposure-change.other-stone-and-other-sand"),
                  Message.of("work.exposure-change.young-open-paste-takes-more")));
      case PATCH ->
          Optional.of(
              new ExposureChange(
                  name,
                  Message.of("work.exposure-change.a-levelled-spot-is-a"),
                  Message.of("work.exposure-change.it-takes-less-dye-expect")));
      case RESIDUE ->
          Optional.of(
              new ExposureChange(
                  name,
                  Message.of("work.exposure-change.the-skin-under-old-adhesive"),
                  Message.of("work.exposure-change.what-is-left-of-it")));
    };
  }
}
