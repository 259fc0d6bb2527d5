package slabwright.sheets.packet;

import java.util.Optional;
import slabwright.units.QuantityFormat;
import slabwright.work.handover.SolventStock;

/**
 * Where cans with solvent stand overnight, with a place to write in; common practice, no source.
 */
public record SolventNight(PacketContents job) {
  private static final String PLACE = "______________";

  /** Empty where the job has no product with solvent. */
  public Optional<String> brief() {
    return most().map(v -> job.words().say("sheets.solvent-night.brief", v, PLACE));
  }

  /** All that is bought: no more can stand there. */
  private Optional<String> most() {
    return SolventStock.bought(job.work())
        .map(
            bought ->
                bought
                    .maybe()
                    .map(v -> QuantityFormat.volume(v, job.site().units()))
                    .orElse("______"));
  }
}
