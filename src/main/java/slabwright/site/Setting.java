package slabwright.site;

/** Whether a floor area lies under a roof. */
public enum Setting {
  INDOOR,
  OUTDOOR
}
