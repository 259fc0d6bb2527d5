package slabwright.project;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import slabwright.site.Declined;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** What differs between two states of a plan, in short sentences for people. */
public final class PlanChanges {
  private final UnitSystem units;
  private final List<String> words = new ArrayList<>();
  private String where = "";

  private PlanChanges(UnitSystem units) {
    this.units = units;
  }

  /** The differences, floor area by floor area, lengths as {@code now} shows them. */
  public static List<String> between(Site then, Site now) {
    PlanChanges c = new PlanChanges(now.units());
    c.say(then.name(), now.name(), "Site renamed from \"" + then.name() + "\"");
    c.say(then.note(), now.note(), "Note under the site's name changed");
    c.say(then.start(), now.start(), "Start of work changed");
    Map<String, FloorArea> before = byId(then.areas(), FloorArea::id);
    for (FloorArea area : now.areas()) {
      FloorArea old = before.remove(area.id());
      if (old == null) {
        c.words.add("Floor area " + named(area.name(), area.id()) + " added");
      } else {
        c.area(old, area, now.areas().size() > 1);
      }
    }
    before.values().forEach(a -> c.words.add("Floor area " + named(a.name(), a.id()) + " removed"));
    return c.words.stream().map(PlanChanges::capital).toList();
  }

  private static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }

  public static String named(String name, String id) {
    return name.isBlank() ? id : "\"" + name + "\"";
  }

  private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
    Map<String, T> map = new LinkedHashMap<>();
    all.forEach(t -> map.put(id.apply(t), t));
    return map;
  }

  private void say(Object then, Object now, String sentence) {
    if (!Objects.equals(then, now)) {
      words.add(where + sentence);
    }
  }

  private void area(FloorArea then, FloorArea now, boolean several) {
    where = several ? named(now.name(), now.id()) + ": " : "";
    say(then.name(), now.name(), "renamed from \"" + then.name() + "\"");
    say(then.setting(), now.setting(), "indoors or outdoors changed");
    outline(then, now);
    list(then.doorways(), now.doorways(), Doorway::id, this::doorway, this::doorwayChanged);
    list(then.marks(), now.marks(), Mark::id, PlanChanges::mark, this::markChanged);
    List<String> order =
        then.marks().stream().map(Mark::id).filter(i -> now.mark(i).isPresent()).toList();
    List<String> ordered =
        now.marks().stream().map(Mark::id).filter(i -> then.mark(i).isPresent()).toList();
    say(order, ordered, "marks lie on each other in another order");
    list(then.inlays(), now.inlays(), Inlay::id, PlanChanges::inlay, this::inlayChanged);
    list(
        then.machines(),
        now.machines(),
        Machine::id,
        m -> "machine " + named(m.name(), m.id()),
        (a, b) -> say(a, b, "machine " + named(b.name(), b.id()) + " changed"));
    say(then.slab(), now.slab(), "what is known of the slab changed");
    say(then.air(), now.air(), "ceiling or air changed");
    say(then.finish(), now.finish(), "dyes, coats or exposure changed");
    say(then.use(), now.use(), "use of the floor answered otherwise");
    list(
        then.declined(),
        now.declined(),
        d -> d.advice().word(),
        PlanChanges::declined,
        (a, b) -> say(a, b, declined(b) + ": by whom or when changed"));
    where = "";
  }

  private void outline(FloorArea then, FloorArea now) {
    int before = then.outline().size();
    int after = now.outline().size();
    if (before != after) {
      words.add(where + "outline has " + after + " sides instead of " + before);
      return;
    }
    for (int k = 0; k < after; k++) {
      double a = wall(then, k);
      double b = wall(now, k);
      if (Math.abs(a - b) > 0.5) {
        words.add(where + "wall " + (k + 1) + " is " + length(b) + " instead of " + length(a));
      }
      say(then.outline().get(k).kind(), now.outline().get(k).kind(), kind(k));
      say(then.outline().get(k).rise(), now.outline().get(k).rise(), bulge(k));
    }
  }

  private static String kind(int wall) {
    return "side " + (wall + 1) + " ends at something else";
  }

  private static String bulge(int wall) {
    return "bulge of side " + (wall + 1) + " changed";
  }

  private static double wall(FloorArea area, int k) {
    List<OutlinePiece> pieces = area.outline();
    return pieces.get(k).from().vec().distanceTo(pieces.get((k + 1) % pieces.size()).from().vec());
  }

  private String length(double mm) {
    return LengthFormat.show(mm, units);
  }

  /** Tells what of two equal things differs. */
  private interface Pair<T> {
    void tell(T then, T now);
  }

  private <T> void list(
      List<T> then,
      List<T> now,
      Function<T, String> id,
      Function<T, String> name,
      Pair<T> changed) {
    Map<String, T> before = byId(then, id);
    for (T t : now) {
      T old = before.remove(id.apply(t));
      if (old == null) {
        words.add(where + name.apply(t) + " added");
      } else {
        changed.tell(old, t);
      }
    }
    before.values().forEach(t -> words.add(where + name.apply(t) + " removed"));
  }

  private static String declined(Declined d) {
    return "refusal of the advice \"" + d.advice().word() + "\"";
  }

  private String doorway(Doorway d) {
    return "doorway " + named(d.name(), d.id());
  }

  private void doorwayChanged(Doorway then, Doorway now) {
    String door = doorway(now);
    if (Math.abs(then.width().mm() - now.width().mm()) > 0.5) {
      words.add(
          where
              + door
              + " is "
              + length(now.width().mm())
              + " wide instead of "
              + length(then.width().mm()));
    }
    boolean moved =
        then.piece() != now.piece() || Math.abs(then.offset().mm() - now.offset().mm()) > 0.5;
    say(false, moved, door + " moved");
    say(then.wayIn(), now.wayIn(), door + (now.wayIn() ? " is a way in" : " is no way in"));
    say(then.name(), now.name(), "doorway \"" + then.name() + "\" renamed to " + door);
  }

  private static String mark(Mark m) {
    return m.kind().type().word() + (m.name().isBlank() ? " " + m.id() : " \"" + m.name() + "\"");
  }

  private void markChanged(Mark then, Mark now) {
    if (!then.kind().type().equals(now.kind().type())) {
      words.add(where + mark(then) + " became a " + now.kind().type().word());
      return;
    }
    say(then.name(), now.name(), mark(then) + " renamed to \"" + now.name() + "\"");
    say(then.kind(), now.kind(), mark(now) + " is described otherwise");
    boolean sizes = !then.form().sizes().equals(now.form().sizes());
    boolean shape =
        !then.form().getClass().equals(now.form().getClass())
            || then.form().spots().size() != now.form().spots().size();
    if (sizes || shape) {
      words.add(where + mark(now) + (shape ? " has another shape" : " has another size"));
    } else {
      say(then.form(), now.form(), mark(now) + " moved");
    }
  }

  private static String inlay(Inlay i) {
    return "inlay " + named(i.name(), i.id());
  }

  private void inlayChanged(Inlay then, Inlay now) {
    String name = inlay(now);
    say(then.name(), now.name(), "inlay \"" + then.name() + "\" renamed to " + name);
    boolean other =
        !then.graphic().equals(now.graphic()) || !then.accepted().equals(now.accepted());
    say(false, other, name + ": graphic replaced");
    if (Math.abs(then.width().mm() - now.width().mm()) > 0.5) {
      words.add(
          where
              + name
              + " is "
              + length(now.width().mm())
              + " wide instead of "
              + length(then.width().mm()));
    }
    say(then.middle().vec(), now.middle().vec(), name + " moved");
    say(then.turn(), now.turn(), name + " turned");
    say(then.spec(), now.spec(), name + ": roll, margins, colours or ties changed");
  }
}
