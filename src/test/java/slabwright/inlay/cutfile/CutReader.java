package slabwright.inlay.cutfile;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.curve.Bezier;

/** Reads a cut file back with nothing but an XML parser and the letters M, L, C and Z. */
final class CutReader {
  private static final Pattern STEP = Pattern.compile("([MLCZ])\\s*([-0-9. ]*)");

  private static final double FINE = 0.001;

  private final Element svg;

  CutReader(String text) throws Exception {
    svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(text)))
            .getDocumentElement();
  }

  String attribute(String name) {
    return svg.getAttribute(name);
  }

  String words(String element) {
    return svg.getElementsByTagName(element).item(0).getTextContent();
  }

  /** Names of all elements in a group. */
  List<String> elements(String group) {
    List<String> names = new ArrayList<>();
    NodeList all = group(group).getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      names.add(all.item(i).getNodeName());
    }
    return names;
  }

  /** Every subpath of a group; fails on one that is not closed. */
  List<Ring> closedRings(String group) {
    List<Ring> rings = new ArrayList<>();
    for (String d : paths(group)) {
      List<Vec> points = new ArrayList<>();
      Matcher m = STEP.matcher(d);
      while (m.find()) {
        if (m.group(1).equals("Z")) {
          rings.add(new Ring(points));
          points = new ArrayList<>();
        } else if (m.group(1).equals("C")) {
          double[] c = numbers(m.group(2));
          points.addAll(
              Bezier.cubic(
                  points.get(points.size() - 1),
                  new Vec(c[0], c[1]),
                  new Vec(c[2], c[3]),
                  new Vec(c[4], c[5]),
                  FINE));
        } else {
          points.add(point(m.group(2)));
        }
      }
      if (!points.isEmpty()) {
        throw new AssertionError("a cut line is not closed: " + d);
      }
    }
    return rings;
  }

  /** The corners of every open line of a group. */
  List<Vec[]> segments(String group) {
    List<Vec[]> segments = new ArrayList<>();
    for (String d : paths(group)) {
      Matcher m = STEP.matcher(d);
      List<Vec> points = new ArrayList<>();
      while (m.find()) {
        points.add(point(m.group(2)));
      }
      segments.add(points.toArray(new Vec[0]));
    }
    return segments;
  }

  /** The corners of every straight line of a group; a closed one ends where it began. */
  List<List<Vec>> lines(String group) {
    List<List<Vec>> lines = new ArrayList<>();
    for (String d : paths(group)) {
      List<Vec> points = new ArrayList<>();
      Matcher m = STEP.matcher(d);
      while (m.find()) {
        points.add(m.group(1).equals("Z") ? points.get(0) : point(m.group(2)));
      }
      lines.add(points);
    }
    return lines;
  }

  /** Length of all straight paths of a group, closing sides included. */
  double length(String group) {
    double sum = 0;
    for (String d : paths(group)) {
      List<Vec> points = new ArrayList<>();
      Matcher m = STEP.matcher(d);
      while (m.find()) {
        points.add(point(m.group(2)));
      }
      for (int i = 1; i < points.size(); i++) {
        sum += points.get(i - 1).distanceTo(points.get(i));
      }
      sum += d.endsWith("Z") ? points.get(points.size() - 1).distanceTo(points.get(0)) : 0;
    }
    return sum;
  }

  List<String> paths(String group) {
    NodeList all = group(group).getElementsByTagName("path");
    List<String> found = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      found.add(((Element) all.item(i)).getAttribute("d"));
    }
    return found;
  }

  private Element group(String id) {
    NodeList all = svg.getElementsByTagName("g");
    for (int i = 0; i < all.getLength(); i++) {
      if (((Element) all.item(i)).getAttribute("id").equals(id)) {
        return (Element) all.item(i);
      }
    }
    throw new AssertionError("no group " + id);
  }

  private static Vec point(String text) {
    double[] xy = numbers(text);
    return new Vec(xy[0], xy[1]);
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.trim().split(" ")).mapToDouble(Double::parseDouble).toArray();
  }
}
