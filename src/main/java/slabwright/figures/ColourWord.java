package slabwright.figures;

import slabwright.drawing.Colour;
import slabwright.site.ColourChoice;
import slabwright.site.Inlay;
import slabwright.units.Message;
import slabwright.words.Words;

/**
 * What people call a colour that has no name of its own: the nearest of some plain words, by a
 * weighted distance of the sRGB parts (the eye's share of red weighed by how red the pair is).
 */
public enum ColourWord {
  BLACK("1a1a1a"),
  CHARCOAL("2d343a"),
  DARK_GRAY("4d4d4d"),
  GRAY("808080"),
  LIGHT_GRAY("c4c4c4"),
  WHITE("f5f5f5"),
  CREAM("f2e6c8"),
  DARK_RED("7a1f1f"),
  RED("c8281e"),
  ORANGE("dd7a2e"),
  GOLD("d9a520"),
  YELLOW("f2d82b"),
  OLIVE("6b6b1e"),
  LIGHT_GREEN("8fc06a"),
  GREEN("2f8a3c"),
  DARK_GREEN("1d4d2b"),
  TEAL("1f8a8a"),
  DEEP_TEAL("154f5b"),
  LIGHT_BLUE("9cc9e8"),
  BLUE_GRAY("7f9fb2"),
  BLUE("2469b8"),
  NAVY("1b2d5c"),
  VIOLET("6a4a9e"),
  PLUM("7a2f5f"),
  PINK("e39ab0"),
  LIGHT_BROWN("b88a5a"),
  BROWN("7a4a24"),
  DARK_BROWN("402818");

  private final String digits;

  ColourWord(String digits) {
    this.digits = digits;
  }

  /** What a person named a colour of an inlay; without a name the nearest plain word. */
  public static String named(String hex, Inlay inlay, Words words) {
    return inlay.spec().colours().stream()
        .filter(c -> c.colour().equals(hex) && !c.name().isBlank())
        .map(ColourChoice::name)
        .findFirst()
        .orElseGet(() -> words.say(of(hex).word()));
  }

  /** A name, or the word for a colour that has none. */
  public static String orName(String nameOrHex, Words words) {
    return nameOrHex.matches("#[0-9a-f]{6}") ? words.say(of(nameOrHex).word()) : nameOrHex;
  }

  /** The word for six hexadecimal digits after a number sign. */
  public static ColourWord of(String hex) {
    Colour wanted = Colour.hex(hex.substring(1));
    ColourWord best = BLACK;
    for (ColourWord w : values()) {
      if (distance(wanted, Colour.hex(w.digits)) < distance(wanted, Colour.hex(best.digits))) {
        best = w;
      }
    }
    return best;
  }

  private static double distance(Colour a, Colour b) {
    double red = (a.red() + b.red()) / 2.0;
    double r = a.red() - b.red();
    double g = a.green() - b.green();
    double bl = a.blue() - b.blue();
    return (2 + red / 256) * r * r + 4 * g * g + (2 + (255 - red) / 256) * bl * bl;
  }

  /** The word as it is read. */
  public Message word() {
    return switch (this) {
      case BLACK -> Message.of("figures.colour-word.black");
      case CHARCOAL -> Message.of("figures.colour-word.charcoal");
      case DARK_GRAY -> Message.of("figures.colour-word.dark-gray");
      case GRAY -> Message.of("figures.colour-word.gray");
      case LIGHT_GRAY -> Message.of("figures.colour-word.light-gray");
      case WHITE -> Message.of("figures.colour-word.white");
      case CREAM -> Message.of("figures.colour-word.cream");
      case DARK_RED -> Message.of("figures.colour-word.dark-red");
      case RED -> Message.of("figures.colour-word.red");
      case ORANGE -> Message.of("figures.colour-word.orange");
      case GOLD -> Message.of("figures.colour-word.gold");
      case YELLOW -> Message.of("figures.colour-word.yellow");
      case OLIVE -> Message.of("figures.colour-word.olive");
      case LIGHT_GREEN -> Message.of("figures.colour-word.light-green");
      case GREEN -> Message.of("figures.colour-word.green");
      case DARK_GREEN -> Message.of("figures.colour-word.dark-green");
      case TEAL -> Message.of("figures.colour-word.teal");
      case DEEP_TEAL -> Message.of("figures.colour-word.deep-teal");
      case LIGHT_BLUE -> Message.of("figures.colour-word.light-blue");
      case BLUE_GRAY -> Message.of("figures.colour-word.blue-gray");
      case BLUE -> Message.of("figures.colour-word.blue");
      case NAVY -> Message.of("figures.colour-word.navy");
      case VIOLET -> Message.of("figures.colour-word.violet");
      case PLUM -> Message.of("figures.colour-word.plum");
      case PINK -> Message.of("figures.colour-word.pink");
      case LIGHT_BROWN -> Message.of("figures.colour-word.light-brown");
      case BROWN -> Message.of("figures.colour-word.brown");
      case DARK_BROWN -> Message.of("figures.colour-word.dark-brown");
    };
  }
}
