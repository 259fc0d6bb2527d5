package slabwright.desk.model;

import java.util.Optional;
import slabwright.shape.Vec;

/**
 * Why something can't be, in the person's words.
 *
 * @param where the point on the site, when there is one
 */
public record RefusalText(String sentence, Optional<Vec> where) {}
