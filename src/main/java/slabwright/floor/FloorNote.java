package slabwright.floor;

import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Something about the take-off that the person should know.
 *
 * @param markId the mark it is about, or empty
 */
public record FloorNote(Message message, String markId, Optional<Vec> where) {}
