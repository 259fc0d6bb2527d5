package slabwright.site.edit;

import slabwright.site.Refusal;
import slabwright.site.Site;

/** What an edit led to: the next site, or why not. */
public sealed interface Outcome {
  /** The next site. */
  record Done(Site site) implements Outcome {}

  /** The edit can't be; nothing changed. */
  record Refused(Refusal refusal) implements Outcome {}

  default boolean isDone() {
    return this instanceof Done;
  }
}
