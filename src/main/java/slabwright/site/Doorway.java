package slabwright.site;

import slabwright.units.Length;

/**
 * An opening in a piece of the outline.
 *
 * @param piece index of the outline piece it stands in
 * @param offset from the piece's first corner to the nearer jamb, along the piece
 * @param wayIn whether machines come in here; a doorway that is no way in is a wall to them
 */
public record Doorway(
    String id, String name, int piece, Length offset, Length width, boolean wayIn) {}
