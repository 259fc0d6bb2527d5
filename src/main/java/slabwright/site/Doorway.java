package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import slabwright.units.Length;

/**
 * An opening in a piece of the outline.
 *
 * @param piece index of the outline piece it stands in
 * @param offset from the piece's first corner to the nearer jamb, along the piece
 * @param width of the opening in the wall
 * @param wayIn whether machines come in here; a doorway that is no way in is a wall to them
 */
@RecordBuilder
public record Doorway(
    String id, String name, int piece, Length offset, Length width, boolean wayIn, Passage passage)
    implements DoorwayBuilder.With {
  /** A doorway of which nothing more is known. */
  public Doorway(String id, String name, int piece, Length offset, Length width, boolean wayIn) {
    this(id, name, piece, offset, width, wayIn, Passage.UNKNOWN);
  }

  /**
   * What goes through.
   *
   * @param leadsTo the doorway of another floor area that this one is the other side of
   * @param clear width that is free with the leaf open, at most the opening's; absent is the
   *     opening's width
   * @param sealed whether it is taped shut for the whole job, so that neither vapour nor anybody
   *     goes through; false is the careful reading
   */
  public record Passage(Optional<LeadsTo> leadsTo, Optional<Length> clear, boolean sealed) {
    public static final Passage UNKNOWN = new Passage(Optional.empty(), Optional.empty());

    /** A passage that is open. */
    public Passage(Optional<LeadsTo> leadsTo, Optional<Length> clear) {
      this(leadsTo, clear, false);
    }

    public Passage withLeadsTo(Optional<LeadsTo> v) {
      return new Passage(v, clear, sealed);
    }

    public Passage withClear(Optional<Length> v) {
      return new Passage(leadsTo, v, sealed);
    }

    public Passage withSealed(boolean v) {
      return new Passage(leadsTo, clear, v);
    }
  }

  /** A doorway of another floor area, both by id. */
  public record LeadsTo(String area, String doorway) {}

  /** The width in mm that is free with the leaf open; the opening's when it was not measured. */
  public double clear() {
    return passage.clear().orElse(width).mm();
  }

  /** The same doorway at another place. */
  public Doorway at(int newPiece, Length newOffset) {
    return new Doorway(id, name, newPiece, newOffset, width, wayIn, passage);
  }
}
