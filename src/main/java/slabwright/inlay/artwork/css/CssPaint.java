package slabwright.inlay.artwork.css;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import slabwright.units.SortedCopy;

/** Which paints the SVG library understands, beside those that {@link CssColourParser} reads. */
final class CssPaint {
  private static final Set<String> NAMES =
      SortedCopy.of(
          List.of(
              ("aliceblue,antiquewhite,aqua,aquamarine,azure,beige,bisque,black,blanchedalmond,blue,"
                      + "blueviolet,brown,burlywood,cadetblue,chartreuse,chocolate,coral,"
                      + "cornflowerblue,cornsilk,crimson,cyan,darkblue,darkcyan,darkgoldenrod,"
                      + "darkgray,darkgreen,darkgrey,darkkhaki,darkmagenta,darkolivegreen,darkorange,"
                      + "darkorchid,darkred,darksalmon,darkseagreen,darkslateblue,darkslategray,"
                      + "darkslategrey,darkturquoise,darkviolet,deeppink,deepskyblue,dimgray,dimgrey,"
                      + "dodgerblue,firebrick,floralwhite,forestgreen,fuchsia,gainsboro,ghostwhite,"
                      + "gold,goldenrod,gray,green,greenyellow,grey,honeydew,hotpink,indianred,indigo,"
                      + "ivory,khaki,lavender,lavenderblush,lawngreen,lemonchiffon,lightblue,"
                      + "lightcoral,lightcyan,lightgoldenrodyellow,lightgray,lightgreen,lightgrey,"
                      + "lightpink,lightsalmon,lightseagreen,lightskyblue,lightslategray,"
                      + "lightslategrey,lightsteelblue,lightyellow,lime,limegreen,linen,magenta,"
                      + "maroon,mediumaquamarine,mediumblue,mediumorchid,mediumpurple,mediumseagreen,"
                      + "mediumslateblue,mediumspringgreen,mediumturquoise,mediumvioletred,"
                      + "midnightblue,mintcream,mistyrose,moccasin,navajowhite,navy,oldlace,olive,"
                      + "olivedrab,orange,orangered,orchid,palegoldenrod,palegreen,paleturquoise,"
                      + "palevioletred,papayawhip,peachpuff,peru,pink,plum,powderblue,purple,red,"
                      + "rosybrown,royalblue,saddlebrown,salmon,sandybrown,seagreen,seashell,sienna,"
                      + "silver,skyblue,slateblue,slategray,slategrey,snow,springgreen,steelblue,tan,"
                      + "teal,thistle,tomato,turquoise,violet,wheat,white,whitesmoke,yellow,"
                      + "yellowgreen")
                  .split(",", -1)));
  private static final Set<String> WORDS = Set.of("none", "inherit", "currentcolor");
  private static final Pattern HEX = Pattern.compile("#([0-9a-f]{3}|[0-9a-f]{6})");
  private static final Pattern LINK = Pattern.compile("url\\([^)]*\\)\\s*");
  private static final Pattern PROFILE = Pattern.compile("\\s*icc-color\\([^)]*\\)$");

  private CssPaint() {}

  /** The words for "as if nothing were said" of CSS Cascade 4 in words of SVG 1.1. */
  static String plain(String property, String value) {
    return switch (value.toLowerCase(Locale.ROOT)) {
      case "initial" -> property.equals("stroke") ? "none" : "#000000";
      case "unset", "revert", "revert-layer" -> "inherit";
      default -> value;
    };
  }

  /** Whether it is a name, a hexadecimal colour, a link, or one of these behind a link. */
  static boolean isUnderstood(String value) {
    String s = value.toLowerCase(Locale.ROOT).trim();
    if (s.startsWith("url(")) {
      String rest = LINK.matcher(s).replaceFirst("");
      return rest.isEmpty() || isUnderstood(rest) || CssColourParser.parse(rest).isPresent();
    }
    String bare = PROFILE.matcher(s).replaceFirst("");
    return NAMES.contains(bare) || WORDS.contains(bare) || HEX.matcher(bare).matches();
  }
}
