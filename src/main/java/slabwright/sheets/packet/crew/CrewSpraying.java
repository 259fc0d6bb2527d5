package slabwright.sheets.packet.crew;

import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.work.MeterWatch;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/**
 * What is worn where something is sprayed that sets no vapour free: its mist is breathed all the
 * same. The usual caution (common practice, no source); the data sheet says which. For solvents the
 * lines on vapour say more.
 */
record CrewSpraying(PacketContents job) {
  Optional<String> worn(StepType type) {
    boolean laid = type.kind() == StepKind.COAT || type.kind() == StepKind.MIST_COAT;
    boolean sprayed = laid && type.tools().contains(ToolKind.SPRAYER);
    return sprayed && !MeterWatch.isAskedFor(job.work(), type)
        ? Optional.of(job.words().say("sheets.crew-spraying.worn"))
        : Optional.empty();
  }
}
