package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * One element of the SVG namespace while it is being checked and rewritten; changeable until it is
 * handed on. Attributes are kept by qualified name ({@code fill}, {@code xlink:href}).
 */
public final class SvgElement implements SvgNode {
  public final String name;
  public final Map<String, String> attributes = new LinkedHashMap<>();
  public final List<SvgNode> children = new ArrayList<>();

  SvgElement(String name) {
    this.name = name;
  }

  boolean is(String other) {
    return name.equals(other);
  }

  /** The attribute's value, or "" when absent. */
  public String get(String attribute) {
    return attributes.getOrDefault(attribute, "");
  }

  /** The id this links to inside the same file, or "" when it has no such link. */
  String localLink() {
    String href = get("xlink:href").trim();
    return href.startsWith("#") ? href.substring(1) : "";
  }

  List<SvgElement> elements() {
    List<SvgElement> list = new ArrayList<>();
    for (SvgNode child : children) {
      if (child instanceof SvgElement e) {
        list.add(e);
      }
    }
    return list;
  }

  /** Calls {@code visit} for this element and everything below, parents first. */
  void walk(Consumer<SvgElement> visit) {
    visit.accept(this);
    for (SvgElement child : elements()) {
      child.walk(visit);
    }
  }

  /** Takes this out of a tree; false when it is not below the tree's root. */
  public boolean takeOutOf(SvgElement root) {
    for (SvgElement child : root.elements()) {
      if (child == this) {
        root.children.removeIf(c -> c == this);
        return true;
      }
      if (takeOutOf(child)) {
        return true;
      }
    }
    return false;
  }

  /** All text directly inside. */
  String text() {
    StringBuilder all = new StringBuilder();
    for (SvgNode child : children) {
      if (child instanceof SvgText t) {
        all.append(t.text());
      }
    }
    return all.toString();
  }

  SvgElement copy() {
    SvgElement copy = new SvgElement(name);
    copy.attributes.putAll(attributes);
    for (SvgNode child : children) {
      copy.children.add(child instanceof SvgElement e ? e.copy() : child);
    }
    return copy;
  }
}
