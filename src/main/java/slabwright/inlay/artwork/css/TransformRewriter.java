package slabwright.inlay.artwork.css;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/** Transforms written the CSS way (units, an origin) become plain SVG 1.1 ones. */
final class TransformRewriter {
  private static final Pattern UNIT =
      Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:e[+-]?\\d+)?)(px|deg|turn|rad|grad)");
  private static final Pattern ORIGIN =
      Pattern.compile("([+-]?[\\d.]+)(?:px)?[\\s,]+([+-]?[\\d.]+)(?:px)?(?:\\s.*)?");
  private static final Pattern ONE_WAY =
      Pattern.compile("(translate|scale|skew)([XY])\\(([^)]*)\\)");

  /** Something stands between two numbers: else there are too many ways to read a long one. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "(?:[\\s,]*(?:matrix|translate|scale|rotate|skewX|skewY)\\s*\\("
              + "[\\s,]*[-+.\\deE]+(?:[\\s,]+[-+.\\deE]+)*[\\s,]*\\))*[\\s,]*");

  private TransformRewriter() {}

  static void rewrite(SvgElement e, WarningCollector notes) {
    String origin = e.attributes.remove("transform-origin");
    String transform = e.get("transform").trim();
    if (transform.isEmpty() || transform.equals("none")) {
      e.attributes.remove("transform");
      return;
    }
    String plain = withoutUnits(oneWay(transform));
    if (origin != null) {
      plain = about(origin, plain, notes);
    }
    if (PLAIN.matcher(plain).matches()) {
      e.attributes.put("transform", plain);
    } else {
      e.attributes.remove("transform");
      notes.add(
          Kind.STYLE_LEFT_OUT, Message.of("inlay.transform-rewriter.not-understood", transform));
    }
  }

  private static String about(String origin, String transform, WarningCollector notes) {
    Matcher m = ORIGIN.matcher(origin.trim());
    if (!m.matches()) {
      notes.add(
          Kind.STYLE_LEFT_OUT, Message.of("inlay.transform-rewriter.origin-left-out", origin));
      return transform;
    }
    String x = m.group(1);
    String y = m.group(2);
    return moved(x, y) + " " + transform + " " + moved(negative(x), negative(y));
  }

  private static String moved(String x, String y) {
    return "translate(" + x + " " + y + ")";
  }

  private static String negative(String number) {
    return String.valueOf(-Double.parseDouble(number));
  }

  private static String oneWay(String transform) {
    return ONE_WAY
        .matcher(transform)
        .replaceAll(
            m -> {
              String v = m.group(3).trim();
              if (m.group(1).equals("skew")) {
                return m.group();
              }
              String still = m.group(1).equals("scale") ? "1" : "0";
              String both = m.group(2).equals("X") ? v + " " + still : still + " " + v;
              return m.group(1) + "(" + both + ")";
            });
  }

  private static String withoutUnits(String transform) {
    return UNIT.matcher(transform)
        .replaceAll(
            m -> {
              double v = Double.parseDouble(m.group(1));
              return switch (m.group(2)) {
                case "turn" -> String.valueOf(v * 360);
                case "rad" -> String.valueOf(Math.toDegrees(v));
                case "grad" -> String.valueOf(v * 0.9);
                default -> m.group(1);
              };
            });
  }
}
