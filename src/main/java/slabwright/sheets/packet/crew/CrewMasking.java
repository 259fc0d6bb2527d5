package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.sheets.packet.PacketContents;
import slabwright.site.EdgeClass;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.units.Message;
import slabwright.work.AreaResult;

/** What gets film and tape before dye is sprayed, by name: all of it, not the walls alone. */
record CrewMasking(PacketContents job) {
  Message told(String areaId) {
    List<String> all = new ArrayList<>();
    job.area(areaId)
        .map(AreaResult::takeoff)
        .ifPresent(
            t -> {
              edges(t).stream().map(job.words()::say).forEach(all::add);
              t.area().marks().stream()
                  .filter(m -> m.kind().type() == MarkType.MASKED_TRIM)
                  .map(Mark::name)
                  .distinct()
                  .forEach(all::add);
            });
    return Message.of("sheets.crew-step.mask-walls", String.join(", ", all));
  }

  private static List<Message> edges(FloorTakeoff takeoff) {
    List<Message> all = new ArrayList<>();
    for (EdgeClass kind : EdgeClass.values()) {
      if (takeoff.edgeLength(kind) > 0) {
        masked(kind).ifPresent(all::add);
      }
    }
    return all;
  }

  /** Nobody masks the air past an open edge. */
  private static Optional<Message> masked(EdgeClass kind) {
    return switch (kind) {
      case WALL -> Optional.of(Message.of("sheets.crew-masking.walls"));
      case OPEN_EDGE -> Optional.empty();
      case KERB -> Optional.of(Message.of("sheets.crew-masking.kerbs"));
      case DOORWAY -> Optional.of(Message.of("sheets.crew-masking.doorways"));
      case ISLAND -> Optional.of(Message.of("sheets.crew-masking.islands"));
      case BOOTH -> Optional.of(Message.of("sheets.crew-masking.booths"));
      case COLUMN -> Optional.of(Message.of("sheets.crew-masking.columns"));
      case TOP_OR_STEP -> Optional.of(Message.of("sheets.crew-masking.tops"));
    };
  }
}
