package slabwright.site;

/**
 * What happens with one colour of a graphic.
 *
 * @param colour as {@code #rrggbb}, lower case
 * @param product id of the dye in the shop book; may be empty
 */
public record ColourChoice(String colour, Use use, String product) {
  /** A colour is dyed, left as floor, or ignored as if it were not painted. */
  public enum Use {
    DYE,
    LEAVE,
    IGNORE
  }
}
