package slabwright.project.plan;

import slabwright.site.Site;
import slabwright.site.edit.Edit;

/**
 * A release whose copy lies beside the plan.
 *
 * @param before the site that was frozen
 * @param edit issues the release, with every graphic accepted as it was frozen
 */
public record FrozenRelease(Site before, Edit edit, int number) {}
