package slabwright.floor;

import java.util.Optional;
import slabwright.shape.Vec;

/**
 * Something about the take-off that the person should know, in one sentence.
 *
 * @param markId the mark it is about, or empty
 */
public record FloorNote(String sentence, String markId, Optional<Vec> where) {}
