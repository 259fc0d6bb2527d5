package slabwright.site;

import java.util.Locale;

/**
 * The advice that there is, by ids that plans and reports keep; {@code work} says when each is
 * given. Advice of a question not asked is another than that of its answer, so that who declined
 * the one has not declined the other.
 */
public enum AdviceId {
  MOISTURE_TEST,
  BREATHING_HUMID,
  BREATHING_DAMP,
  BARRIER_UNKNOWN,
  BARRIER_NONE,
  OUTDOOR_BREATHING,
  SUN_UNKNOWN,
  SUN_FAST,
  WET_UNKNOWN,
  GRIT,
  TRAFFIC_UNKNOWN,
  TWO_PART_TRAFFIC,
  SAMPLE_PANEL;

  /** As the plan file and the reports write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
