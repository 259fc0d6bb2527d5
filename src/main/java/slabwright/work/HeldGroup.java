package slabwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slabwright.units.Message;

/**
 * Steps that are held for one reason, such as the sections of a coat: told once, with their number.
 *
 * @param all in the order of the steps; at least one
 */
public record HeldGroup(List<HeldStep> all) {
  public HeldGroup {
    all = List.copyOf(all);
  }

  /**
   * What makes two of them alike: all but the step's name, which a reason begins with, and figures,
   * of which the worst is told.
   */
  private record Reason(String area, String key, List<Object> rest, List<String> frees) {
    static Reason of(HeldStep h) {
      List<Object> rest =
          h.why().values().stream()
              .skip(h.why().values().stream().limit(1).filter(Message.class::isInstance).count())
              .filter(v -> !(v instanceof Number))
              .toList();
      return new Reason(
          h.area(), h.why().key(), rest, h.frees().stream().map(Message::key).toList());
    }
  }

  /** All that are held for a reason of their own, each reason once; not those that wait for one. */
  public static List<HeldGroup> of(List<HeldStep> held) {
    Map<Reason, List<HeldStep>> alike = new LinkedHashMap<>();
    held.stream()
        .filter(h -> !h.frees().isEmpty())
        .forEach(h -> alike.computeIfAbsent(Reason.of(h), r -> new ArrayList<>()).add(h));
    return alike.values().stream().map(HeldGroup::new).toList();
  }

  public HeldStep first() {
    return all.get(0);
  }

  /** With the largest figure, such as the share of LEL; the first where there is none. */
  public HeldStep worst() {
    return all.stream().reduce((a, b) -> figure(b) > figure(a) ? b : a).orElseThrow();
  }

  private static double figure(HeldStep h) {
    return h.why().values().stream()
        .filter(Number.class::isInstance)
        .mapToDouble(v -> ((Number) v).doubleValue())
        .findFirst()
        .orElse(0);
  }

  /** The reason of the worst; where there are more, how many from which to which. */
  public Message why() {
    return all.size() == 1
        ? first().why()
        : Message.of(
            "work.held-group.alike",
            worst().why(),
            all.size(),
            first().why().values().get(0),
            all.get(all.size() - 1).why().values().get(0));
  }
}
