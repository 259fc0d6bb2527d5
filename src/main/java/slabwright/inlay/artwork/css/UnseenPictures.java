package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/**
 * Pictures in a drawing: one that nobody sees (hidden, empty, without size, or kept for use and
 * never used) is taken out with a note, one that is seen and lies outside the file is refused.
 */
final class UnseenPictures {
  private static final Set<String> KEPT_FOR_USE =
      Set.of("defs", "symbol", "pattern", "mask", "clipPath", "marker");
  private static final Pattern LINK = Pattern.compile("#([^'\")\\s]+)");

  private final MatchedRules matched;
  private final WarningCollector notes;
  private final Set<String> used = new HashSet<>();

  private UnseenPictures(SvgElement root, MatchedRules matched, WarningCollector notes) {
    this.matched = matched;
    this.notes = notes;
    root.walk(
        e -> {
          e.attributes.forEach((name, value) -> links(value));
          if (e.is("style")) {
            links(e.text());
          }
        });
  }

  private void links(String text) {
    for (Matcher m = LINK.matcher(text); m.find(); ) {
      used.add(m.group(1));
    }
  }

  static void takeOut(SvgElement root, MatchedRules matched, WarningCollector notes) {
    new UnseenPictures(root, matched, notes).visit(new ArrayList<>(List.of(root)), false, false);
  }

  /**
   * Goes through all below the last of {@code path}.
   *
   * @param hidden whether something around it hides it
   * @param unused whether it is kept for use, and nothing so far is used
   */
  private void visit(List<SvgElement> path, boolean hidden, boolean unused) {
    SvgElement outer = path.get(path.size() - 1);
    for (SvgElement child : outer.elements()) {
      path.add(child);
      boolean kept = unused || KEPT_FOR_USE.contains(child.name);
      boolean idle = kept && !used.contains(child.get("id"));
      boolean gone = hidden || isHidden(path);
      if (child.is("image")) {
        picture(outer, child, gone || idle);
      } else {
        visit(path, gone, idle);
      }
      path.remove(path.size() - 1);
    }
  }

  private boolean isHidden(List<SvgElement> path) {
    SvgElement e = path.get(path.size() - 1);
    Map<String, String> said = matched.of(path);
    said.putAll(CssDeclarations.parse(e.get("style")));
    return said.getOrDefault("display", e.get("display")).trim().equals("none")
        || said.getOrDefault("visibility", e.get("visibility")).trim().equals("hidden")
        || said.getOrDefault("opacity", e.get("opacity")).trim().matches("0*\\.?0+%?");
  }

  private void picture(SvgElement outer, SvgElement image, boolean unseen) {
    String target = image.get("xlink:href").trim();
    boolean sized = !isNothing(image.get("width")) && !isNothing(image.get("height"));
    if (!unseen && sized && !target.isEmpty()) {
      if (!target.startsWith("data:")) {
        throw StyleRewriter.external(target);
      }
      return;
    }
    outer.children.remove(image);
    notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.unseen-pictures.left-out"));
  }

  private static boolean isNothing(String size) {
    return size.trim().matches("-.*|0*\\.?0+[a-z%]*");
  }
}
