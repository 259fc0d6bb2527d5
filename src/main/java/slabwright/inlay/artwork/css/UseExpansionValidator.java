package slabwright.inlay.artwork.css;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/**
 * Counts how far a graphic grows when its {@code <use>} copies, patterns, masks, clips and markers
 * are unfolded, before anything is unfolded, whether an attribute, a style or a style rule asks for
 * them. A few lines can stand for billions of shapes.
 */
public final class UseExpansionValidator {
  static final long MOST_ELEMENTS = 200_000;

  /** Each rule is held against each element, here and by the renderer. */
  private static final long MOST_RULE_TRIALS = 20_000_000;

  private static final int DEEPEST = 2 * SvgReader.MAX_DEPTH;
  private static final Set<String> OUTLINES =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan");
  private static final Set<String> GRADIENTS = Set.of("linearGradient", "radialGradient");

  /** What one element unfolds to. */
  private record ExpandedSize(long elements, int depth) {
    ExpandedSize with(ExpandedSize inside, long times) {
      // saturate, so that a bomb cannot wrap round to a small number
      long more =
          times > 0 && inside.elements > Long.MAX_VALUE / 4 / times
              ? Long.MAX_VALUE / 4
              : inside.elements * times;
      return new ExpandedSize(
          Math.min(Long.MAX_VALUE / 4, elements + more), Math.max(depth, inside.depth + 1));
    }
  }

  /** An element with the links that are handed down to it. */
  private record Placed(SvgElement element, Map<String, String> links) {}

  private final Map<String, SvgElement> byId = new HashMap<>();
  private final Map<Placed, ExpandedSize> known = new HashMap<>();
  private final Set<SvgElement> path = new HashSet<>();
  private final InheritedLinks links;

  private UseExpansionValidator(SvgElement root) {
    MatchedRules rules = new MatchedRules();
    root.walk(
        e -> {
          byId.putIfAbsent(e.get("id"), e);
          if (e.is("style")) {
            new StyleSheet(e.text(), new WarningCollector()).addTo(rules);
          }
        });
    links = new InheritedLinks(root, rules);
  }

  /** Before any rule is held against an element. */
  public static void checkRules(SvgElement root) {
    MatchedRules rules = new MatchedRules();
    AtomicLong elements = new AtomicLong();
    root.walk(
        e -> {
          elements.incrementAndGet();
          if (e.is("style")) {
            new StyleSheet(e.text(), new WarningCollector()).addTo(rules);
          }
        });
    if (elements.get() * rules.count() > MOST_RULE_TRIALS) {
      throw new RefusedArtworkException(
          Reason.USE_TOO_MANY,
          Message.of(
              "inlay.use-expansion-validator.too-many-rules", rules.count(), elements.get()));
    }
  }

  public static void check(SvgElement root) {
    ExpandedSize all = new UseExpansionValidator(root).cost(root, Map.of());
    if (all.depth > DEEPEST) {
      throw tooDeep();
    }
    if (all.elements > MOST_ELEMENTS) {
      throw tooMany();
    }
  }

  private static RefusedArtworkException tooDeep() {
    return new RefusedArtworkException(
        Reason.TOO_DEEP, Message.of("inlay.use-expansion-validator.too-deep", DEEPEST));
  }

  private static RefusedArtworkException tooMany() {
    return new RefusedArtworkException(
        Reason.USE_TOO_MANY,
        Message.of("inlay.use-expansion-validator.too-many-copies", MOST_ELEMENTS));
  }

  private ExpandedSize cost(SvgElement e, Map<String, String> outer) {
    Placed placed = new Placed(e, outer);
    ExpandedSize before = known.get(placed);
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
    ExpandedSize sum = painted(e, links.handedDown(e, outer));
    path.remove(e);
    known.put(placed, sum);
    // each stands for an element of what is unfolded, so there are at least as many of those
    if (known.size() > MOST_ELEMENTS) {
      throw tooMany();
    }
    return sum;
  }

  private ExpandedSize painted(SvgElement e, Map<String, String> inner) {
    ExpandedSize sum = new ExpandedSize(1, 1);
    for (SvgElement child : e.elements()) {
      sum = sum.with(cost(child, inner), 1);
    }
    SvgElement copied = byId.get(e.localLink());
    if (copied != null && !e.localLink().isEmpty()) {
      sum = sum.with(cost(copied, inner), 1);
    }
    for (String id : links.own(e)) {
      sum = linked(sum, id, 1);
    }
    return OUTLINES.contains(e.name) ? withPaints(sum, e, inner) : sum;
  }

  private ExpandedSize withPaints(ExpandedSize before, SvgElement e, Map<String, String> inner) {
    ExpandedSize sum = before;
    for (Map.Entry<String, String> link : inner.entrySet()) {
      boolean marker = link.getKey().startsWith("marker");
      long corners = marker ? MarkerVertices.of(e) : 1;
      long times = link.getKey().equals("marker-mid") ? corners : Math.min(1, corners);
      sum = linked(sum, link.getValue(), times);
    }
    return sum;
  }

  private ExpandedSize linked(ExpandedSize sum, String id, long times) {
    SvgElement target = byId.get(id);
    boolean unfolds = target != null && times > 0 && !GRADIENTS.contains(target.name);
    return unfolds ? sum.with(cost(target, links.around(target)), times) : sum;
  }
}
