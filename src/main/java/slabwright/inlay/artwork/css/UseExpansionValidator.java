package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.units.Message;

/**
 * Counts how far a graphic grows when its {@code <use>} copies (and patterns, masks, clips and
 * markers) are unfolded, before anything is unfolded. A few lines can stand for billions of shapes.
 */
public final class UseExpansionValidator {
  static final long MOST_ELEMENTS = 200_000;
  private static final int DEEPEST = 2 * SvgReader.MAX_DEPTH;
  private static final Pattern URL = Pattern.compile("url\\(\\s*['\"]?#([^'\")]+)");

  /** What one element unfolds to. */
  private record ExpandedSize(long elements, int depth) {}

  private final Map<String, SvgElement> byId = new HashMap<>();
  private final Map<SvgElement, ExpandedSize> known = new HashMap<>();
  private final Set<SvgElement> path = new HashSet<>();

  private UseExpansionValidator() {}

  public static void check(SvgElement root) {
    UseExpansionValidator budget = new UseExpansionValidator();
    root.walk(e -> budget.byId.putIfAbsent(e.get("id"), e));
    ExpandedSize all = budget.cost(root);
    if (all.depth > DEEPEST) {
      throw tooDeep();
    }
    if (all.elements > MOST_ELEMENTS) {
      throw new RefusedArtworkException(
          Reason.USE_TOO_MANY,
          Message.of("inlay.use-expansion-validator.too-many-copies", MOST_ELEMENTS));
    }
  }

  private static RefusedArtworkException tooDeep() {
    return new RefusedArtworkException(
        Reason.TOO_DEEP, Message.of("inlay.use-expansion-validator.too-deep", DEEPEST));
  }

  private ExpandedSize cost(SvgElement e) {
    ExpandedSize before = known.get(e);
    if (before != null) {
      return before;
    }
    if (!path.add(e)) {
      throw new RefusedArtworkException(
          Reason.USE_LOOP, Message.of("inlay.use-expansion-validator.copy-of-itself", e.get("id")));
    }
    if (path.size() > DEEPEST) {
      throw tooDeep();
    }
    long elements = 1;
    int depth = 0;
    List<SvgElement> below = new ArrayList<>(e.elements());
    below.addAll(linked(e));
    for (SvgElement next : below) {
      ExpandedSize c = cost(next);
      // saturate, so that a bomb cannot wrap round to a small number
      elements = Math.min(Long.MAX_VALUE / 4, elements + c.elements);
      depth = Math.max(depth, c.depth);
    }
    path.remove(e);
    ExpandedSize sum = new ExpandedSize(elements, depth + 1);
    known.put(e, sum);
    return sum;
  }

  private List<SvgElement> linked(SvgElement e) {
    List<SvgElement> targets = new ArrayList<>();
    if (!e.localLink().isEmpty()) {
      add(e.localLink(), targets);
    }
    for (Map.Entry<String, String> a : e.attributes.entrySet()) {
      if (a.getValue().contains("url(")) {
        Matcher m = URL.matcher(a.getValue());
        while (m.find()) {
          add(m.group(1), targets);
        }
      }
    }
    return targets;
  }

  private void add(String id, List<SvgElement> targets) {
    SvgElement target = byId.get(id);
    if (target != null) {
      targets.add(target);
    }
  }
}
