package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * What happens with one colour of a graphic.
 *
 * @param colour as {@code #rrggbb}, lower case
 * @param product id of the dye in the shop book; may be empty
 * @param name what people call the colour; may be empty
 */
@RecordBuilder
public record ColourChoice(String colour, Use use, String product, String name)
    implements ColourChoiceBuilder.With {
  /** A colour without a name. */
  public ColourChoice(String colour, Use use, String product) {
    this(colour, use, product, "");
  }

  /** A colour is dyed, left as floor, or ignored as if it were not painted. */
  public enum Use {
    DYE,
    LEAVE,
    IGNORE
  }
}
