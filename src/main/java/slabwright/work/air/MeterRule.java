package slabwright.work.air;

import slabwright.units.Message;

/**
 * What whoever holds the gas meter has to know, of the strictest solvent on the floor.
 *
 * @param solvent its name
 * @param entryPpm nobody without breathing protection is in at this or above
 * @param outPpm everybody is out at this or above
 * @param minutes between two readings; common practice, no source
 */
public record MeterRule(Message solvent, double entryPpm, double outPpm, int minutes) {
  /** Minutes between two readings where no solvent is known yet; common practice, no source. */
  public static final int USUAL_MINUTES = 15;

  static MeterRule of(GasMeter m) {
    return new MeterRule(
        Message.of("work.meter-rule.solvent", m.strictest().said()),
        m.entryPpm(),
        m.outPpm(),
        USUAL_MINUTES);
  }
}
