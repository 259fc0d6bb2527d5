package slabwright.inlay.artwork;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.units.CieLab;
import slabwright.units.Message;

/**
 * Something that only a person can decide before vinyl is cut. Answered by a choice for its
 * colours; see {@link Answer}.
 *
 * @param message becomes one sentence that asks
 * @param colours which it is about, {@code #rrggbb}; the first is the one to change. Empty when it
 *     is about all of them
 * @param place where, in mm from the painted bounds' top-left, y down
 */
public record ArtworkQuestion(
    Kind kind, Message message, List<String> colours, Optional<Vec> place) {
  public ArtworkQuestion {
    colours = List.copyOf(colours);
  }

  /** What is asked about. */
  public enum Kind {
    /** White or nearly: dye cannot lighten concrete. */
    WHITE,
    /** Two colours that the eye cannot tell apart. */
    CLOSE_COLOURS,
    /** So see-through that it hardly shows; dyed, it would be solid. */
    VEIL,
    /** A soft change of colour, which a stencil cannot show. */
    FADE,
    /** A pattern, which would be dyed in one colour. */
    PATTERN,
    /** Which colour of a picture is its paper can't be told; this one is along most of its rim. */
    PAPER,
    /** Very many small openings of one colour, each of them weeded by hand. */
    MANY_OPENINGS,
    /** More colours than can sensibly be laid one after the other. */
    MANY_COLOURS;

    /** What is offered; dyeing it as it is drawn is always the other choice. */
    public Answer offered() {
      return switch (this) {
        case WHITE, FADE, PATTERN, PAPER, MANY_OPENINGS -> Answer.LEAVE_BARE;
        case VEIL -> Answer.IGNORE;
        case CLOSE_COLOURS, MANY_COLOURS -> Answer.MERGE;
      };
    }
  }

  /** What a person can answer. */
  public enum Answer {
    /** The colour stays bare floor. */
    LEAVE_BARE,
    /** The colour counts as not painted: what is under it is seen. */
    IGNORE,
    /** Colours no farther apart than {@link #deltaE} count as one. */
    MERGE
  }

  /** The colour difference at which its two colours become one; 0 when it is not about two. */
  public double deltaE() {
    return colours.size() < 2
        ? 0
        // rounded up, so that the number as printed still merges them
        : Math.ceil(CieLab.ofHex(colours.get(0)).deltaE(CieLab.ofHex(colours.get(1))) * 10) / 10;
  }
}
