package slabwright.units;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Plain names of colours, after the named colours of CSS (Color Module Level 4) with their sRGB
 * values: those that people say. Many also have a dark and a light shade.
 */
enum ColourName {
  BLACK("000000"),
  DARK_GRAY("505050"),
  GRAY("808080"),
  LIGHT_GRAY("c8c8c8"),
  WHITE("ffffff"),
  IVORY("fffff0"),
  BEIGE("f5f5dc"),
  TAN("d2b48c"),
  BROWN("8b4513"),
  MAROON("800000"),
  RED("ff0000"),
  CRIMSON("dc143c"),
  TOMATO("ff6347"),
  CORAL("ff7f50"),
  SALMON("fa8072"),
  PINK("ffc0cb"),
  MAGENTA("ff00ff"),
  PLUM("dda0dd"),
  PURPLE("800080"),
  VIOLET("ee82ee"),
  LAVENDER("e6e6fa"),
  INDIGO("4b0082"),
  NAVY("000080"),
  BLUE("0000ff"),
  ROYAL_BLUE("4169e1"),
  SKY_BLUE("87ceeb"),
  STEEL_BLUE("4682b4"),
  SLATE_GRAY("708090"),
  CYAN("00ffff"),
  TURQUOISE("40e0d0"),
  TEAL("008080"),
  SEA_GREEN("2e8b57"),
  LIME_GREEN("32cd32"),
  GREEN("008000"),
  OLIVE("808000"),
  KHAKI("f0e68c"),
  YELLOW("ffff00"),
  GOLD("ffd700"),
  ORANGE("ffa500"),
  CHOCOLATE("d2691e");

  /** How a shade stands to its colour: a step of lightness that the eye calls dark or light. */
  static final double DARK = 0.62;

  static final double LIGHT = 0.45;

  private final String hex;

  ColourName(String hex) {
    this.hex = hex;
  }

  /** A plain name, or a dark or light shade of it. */
  record Shaded(ColourName base, Shade shade) {
    Message word() {
      return switch (shade) {
        case PLAIN -> base.word();
        case DARK -> Message.of("units.colour-name.dark", base.word());
        case LIGHT -> Message.of("units.colour-name.light", base.word());
      };
    }

    private CieLab colour() {
      CieLab c = CieLab.ofHex(base.hex);
      return switch (shade) {
        case PLAIN -> c;
        case DARK -> c.atLightness(c.l() * DARK, DARK);
        case LIGHT -> c.atLightness(c.l() + (100 - c.l()) * LIGHT, 1 - LIGHT);
      };
    }
  }

  /** How a name is shaded. */
  enum Shade {
    PLAIN,
    DARK,
    LIGHT
  }

  /** The name nearest to the eye. */
  static Shaded nearest(String hex) {
    CieLab wanted = CieLab.ofHex(hex);
    return Arrays.stream(values())
        .flatMap(n -> Arrays.stream(Shade.values()).map(s -> new Shaded(n, s)))
        .filter(s -> s.shade() == Shade.PLAIN || s.base().hasShades())
        .filter(s -> s.shade() != Shade.DARK || !s.base().isBrownWhenDark())
        .min(Comparator.comparingDouble(s -> s.colour().difference(wanted)))
        .orElseThrow();
  }

  /** Nobody says so of what is dark, light or a shade of another already. */
  private boolean hasShades() {
    return switch (this) {
      case TAN,
          BROWN,
          RED,
          PINK,
          MAGENTA,
          PURPLE,
          VIOLET,
          BLUE,
          STEEL_BLUE,
          SLATE_GRAY,
          TURQUOISE,
          TEAL,
          SEA_GREEN,
          GREEN,
          OLIVE,
          YELLOW,
          GOLD,
          ORANGE ->
          true;
      case BLACK,
          DARK_GRAY,
          GRAY,
          LIGHT_GRAY,
          WHITE,
          IVORY,
          BEIGE,
          MAROON,
          CRIMSON,
          TOMATO,
          CORAL,
          SALMON,
          PLUM,
          LAVENDER,
          INDIGO,
          NAVY,
          ROYAL_BLUE,
          SKY_BLUE,
          CYAN,
          LIME_GREEN,
          KHAKI,
          CHOCOLATE ->
          false;
    };
  }

  /** A dark orange is what people call brown, a dark yellow olive. */
  private boolean isBrownWhenDark() {
    return this == ORANGE || this == YELLOW || this == GOLD;
  }

  Message word() {
    return switch (this) {
      case BLACK -> Message.of("units.colour-name.black");
      case DARK_GRAY -> Message.of("units.colour-name.dark-gray");
      case GRAY -> Message.of("units.colour-name.gray");
      case LIGHT_GRAY -> Message.of("units.colour-name.light-gray");
      case WHITE -> Message.of("units.colour-name.white");
      case IVORY -> Message.of("units.colour-name.ivory");
      case BEIGE -> Message.of("units.colour-name.beige");
      case TAN -> Message.of("units.colour-name.tan");
      case BROWN -> Message.of("units.colour-name.brown");
      case MAROON -> Message.of("units.colour-name.maroon");
      case RED -> Message.of("units.colour-name.red");
      case CRIMSON -> Message.of("units.colour-name.crimson");
      case TOMATO -> Message.of("units.colour-name.tomato");
      case CORAL -> Message.of("units.colour-name.coral");
      case SALMON -> Message.of("units.colour-name.salmon");
      case PINK -> Message.of("units.colour-name.pink");
      case MAGENTA -> Message.of("units.colour-name.magenta");
      case PLUM -> Message.of("units.colour-name.plum");
      case PURPLE -> Message.of("units.colour-name.purple");
      case VIOLET -> Message.of("units.colour-name.violet");
      case LAVENDER -> Message.of("units.colour-name.lavender");
      case INDIGO -> Message.of("units.colour-name.indigo");
      case NAVY -> Message.of("units.colour-name.navy");
      case BLUE -> Message.of("units.colour-name.blue");
      case ROYAL_BLUE -> Message.of("units.colour-name.royal-blue");
      case SKY_BLUE -> Message.of("units.colour-name.sky-blue");
      case STEEL_BLUE -> Message.of("units.colour-name.steel-blue");
      case SLATE_GRAY -> Message.of("units.colour-name.slate-gray");
      case CYAN -> Message.of("units.colour-name.cyan");
      case TURQUOISE -> Message.of("units.colour-name.turquoise");
      case TEAL -> Message.of("units.colour-name.teal");
      case SEA_GREEN -> Message.of("units.colour-name.sea-green");
      case LIME_GREEN -> Message.of("units.colour-name.lime-green");
      case GREEN -> Message.of("units.colour-name.green");
      case OLIVE -> Message.of("units.colour-name.olive");
      case KHAKI -> Message.of("units.colour-name.khaki");
      case YELLOW -> Message.of("units.colour-name.yellow");
      case GOLD -> Message.of("units.colour-name.gold");
      case ORANGE -> Message.of("units.colour-name.orange");
      case CHOCOLATE -> Message.of("units.colour-name.chocolate");
    };
  }
}
