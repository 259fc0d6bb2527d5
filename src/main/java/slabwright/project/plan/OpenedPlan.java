package slabwright.project.plan;

import java.util.Optional;
import slabwright.site.Site;

/**
 * A plan that was read.
 *
 * @param recovered what a crash left in a journal of it, where that is something else
 * @param journal number of that journal, else of the first that can be written
 * @param stamp tells the text that was read from any other; empty when it could not be told
 */
public record OpenedPlan(
    Site saved, Optional<Site> recovered, int journal, Optional<String> stamp) {}
