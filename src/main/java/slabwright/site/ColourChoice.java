package slabwright.site;

/**
 * What happens with one colour of a graphic.
 *
 * @param colour as {@code #rrggbb}, lower case
 * @param product id of the dye in the shop book; may be empty
 * @param name what people call the colour; may be empty
 */
public record ColourChoice(String colour, Use use, String product, String name) {
  /** A colour without a name. */
  public ColourChoice(String colour, Use use, String product) {
    this(colour, use, product, "");
  }

  public ColourChoice withUse(Use v) {
    return new ColourChoice(colour, v, product, name);
  }

  public ColourChoice withProduct(String v) {
    return new ColourChoice(colour, use, v, name);
  }

  public ColourChoice withName(String v) {
    return new ColourChoice(colour, use, product, v);
  }

  /** A colour is dyed, left as floor, or ignored as if it were not painted. */
  public enum Use {
    DYE,
    LEAVE,
    IGNORE
  }
}
