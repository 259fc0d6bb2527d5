package slabwright.project.plan;

import java.util.Optional;
import slabwright.site.Site;

/**
 * A plan that was read.
 *
 * @param recovered what a crash left in its journal, where that is something else
 * @param stamp tells the text that was read from any other; empty when it could not be told
 */
public record OpenedPlan(Site saved, Optional<Site> recovered, Optional<String> stamp) {}
