package slabwright.project.plan;

import java.time.Instant;
import slabwright.site.Site;

/**
 * What a process that ended without saving left behind.
 *
 * @param at its last edit
 */
public record LeftWork(Site site, Instant at) {}
