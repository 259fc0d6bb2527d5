package slabwright.project;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import slabwright.site.AreaDetails;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.JobDetails;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.work.coat.ClientAdvice;

/** What differs between two states of a plan, in short sentences for people. */
public final class PlanChanges {
  private final UnitSystem units;
  private final List<Message> found = new ArrayList<>();
  private Optional<Message> where = Optional.empty();

  private PlanChanges(UnitSystem units) {
    this.units = units;
  }

  /** The differences, floor area by floor area, lengths as {@code now} shows them. */
  public static List<Message> between(Site then, Site now) {
    PlanChanges c = new PlanChanges(now.units());
    c.say(then.name(), now.name(), Message.of("project.plan-changes.site-renamed", then.name()));
    c.say(then.note(), now.note(), Message.of("project.plan-changes.site-note"));
    c.say(then.start(), now.start(), Message.of("project.plan-changes.start"));
    c.job(then.job(), now.job());
    Map<String, FloorArea> before = byId(then.areas(), FloorArea::id);
    for (FloorArea area : now.areas()) {
      FloorArea old = before.remove(area.id());
      if (old == null) {
        c.add(Message.of("project.plan-changes.area-added", named(area.name(), area.id())));
      } else {
        c.area(old, area, now.areas().size() > 1);
      }
    }
    before
        .values()
        .forEach(
            a -> c.add(Message.of("project.plan-changes.area-removed", named(a.name(), a.id()))));
    return List.copyOf(c.found);
  }

  /** What a thing is called: its name, or its id when it has none. */
  public static Message named(String name, String id) {
    return name.isBlank()
        ? Message.of("project.plan-changes.without-name", id)
        : Message.of("project.plan-changes.named", name);
  }

  private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
    Map<String, T> map = new LinkedHashMap<>();
    all.forEach(t -> map.put(id.apply(t), t));
    return map;
  }

  private void add(Message change) {
    found.add(
        where.map(area -> Message.of("project.plan-changes.in-area", area, change)).orElse(change));
  }

  private void say(Object then, Object now, Message change) {
    if (!Objects.equals(then, now)) {
      add(change);
    }
  }

  /** Readings and photos are a record of the days, no change of what was issued. */
  private void job(JobDetails then, JobDetails now) {
    say(then.contractor(), now.contractor(), Message.of("project.plan-changes.contractor"));
    say(then.client(), now.client(), Message.of("project.plan-changes.client"));
    say(then.clientPhoto(), now.clientPhoto(), Message.of("project.plan-changes.client-photo"));
    say(then.crew(), now.crew(), Message.of("project.plan-changes.crew"));
    say(then.shopBook(), now.shopBook(), Message.of("project.plan-changes.shop-book"));
    say(then.forecast(), now.forecast(), Message.of("project.plan-changes.forecast"));
  }

  private void details(AreaDetails then, AreaDetails now) {
    say(then.taped(), now.taped(), Message.of("project.plan-changes.taped"));
    say(then.built(), now.built(), Message.of("project.plan-changes.built"));
    say(
        then.coatDivisions(),
        now.coatDivisions(),
        Message.of("project.plan-changes.coat-divisions"));
    say(then.stops(), now.stops(), Message.of("project.plan-changes.stops"));
    say(then.holds(), now.holds(), Message.of("project.plan-changes.holds"));
  }

  private void area(FloorArea then, FloorArea now, boolean several) {
    where = several ? Optional.of(named(now.name(), now.id())) : Optional.empty();
    say(then.name(), now.name(), Message.of("project.plan-changes.area-renamed", then.name()));
    say(then.setting(), now.setting(), Message.of("project.plan-changes.setting"));
    outline(then, now);
    things(then, now);
    say(then.slab(), now.slab(), Message.of("project.plan-changes.slab"));
    say(then.air(), now.air(), Message.of("project.plan-changes.air"));
    say(then.finish(), now.finish(), Message.of("project.plan-changes.finish"));
    say(then.use(), now.use(), Message.of("project.plan-changes.use"));
    details(then.details(), now.details());
    list(
        then.declined(),
        now.declined(),
        new Kind<>(
            d -> d.advice().word(),
            d -> Message.of("project.plan-changes.refusal-added", ClientAdvice.prefer(d.advice())),
            d ->
                Message.of("project.plan-changes.refusal-removed", ClientAdvice.prefer(d.advice())),
            (a, b) ->
                say(
                    a,
                    b,
                    Message.of(
                        "project.plan-changes.refusal-changed", ClientAdvice.prefer(b.advice())))));
    where = Optional.empty();
  }

  private void things(FloorArea then, FloorArea now) {
    list(
        then.doorways(),
        now.doorways(),
        new Kind<>(
            Doorway::id,
            d -> Message.of("project.plan-changes.doorway-added", named(d.name(), d.id())),
            d -> Message.of("project.plan-changes.doorway-removed", named(d.name(), d.id())),
            this::doorwayChanged));
    list(
        then.marks(),
        now.marks(),
        new Kind<>(
            Mark::id,
            m -> Message.of("project.plan-changes.mark-added", mark(m)),
            m -> Message.of("project.plan-changes.mark-removed", mark(m)),
            this::markChanged));
    say(order(then, now), order(now, then), Message.of("project.plan-changes.mark-order"));
    list(
        then.inlays(),
        now.inlays(),
        new Kind<>(
            Inlay::id,
            i -> Message.of("project.plan-changes.inlay-added", named(i.name(), i.id())),
            i -> Message.of("project.plan-changes.inlay-removed", named(i.name(), i.id())),
            this::inlayChanged));
    list(
        then.machines(),
        now.machines(),
        new Kind<>(
            Machine::id,
            m -> Message.of("project.plan-changes.machine-added", named(m.name(), m.id())),
            m -> Message.of("project.plan-changes.machine-removed", named(m.name(), m.id())),
            (a, b) -> {
              Message name = named(b.name(), b.id());
              say(a, b, Message.of("project.plan-changes.machine-changed", name));
            }));
  }

  /** The marks of one state that the other has too, as they lie on each other. */
  private static List<String> order(FloorArea one, FloorArea other) {
    return one.marks().stream().map(Mark::id).filter(i -> other.mark(i).isPresent()).toList();
  }

  private void outline(FloorArea then, FloorArea now) {
    int before = then.outline().size();
    int after = now.outline().size();
    if (before != after) {
      add(Message.of("project.plan-changes.sides", after, before));
      return;
    }
    for (int k = 0; k < after; k++) {
      double a = wall(then, k);
      double b = wall(now, k);
      if (Math.abs(a - b) > 0.5) {
        add(Message.of("project.plan-changes.wall", k + 1, length(b), length(a)));
      }
      OutlinePiece old = then.outline().get(k);
      OutlinePiece piece = now.outline().get(k);
      say(old.kind(), piece.kind(), Message.of("project.plan-changes.side-kind", k + 1));
      say(old.rise(), piece.rise(), Message.of("project.plan-changes.side-bulge", k + 1));
    }
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

  /** How the things of one kind are told apart, and what is said of them. */
  private record Kind<T>(
      Function<T, String> id,
      Function<T, Message> added,
      Function<T, Message> removed,
      Pair<T> changed) {}

  private <T> void list(List<T> then, List<T> now, Kind<T> kind) {
    Map<String, T> before = byId(then, kind.id());
    for (T t : now) {
      T old = before.remove(kind.id().apply(t));
      if (old == null) {
        add(kind.added().apply(t));
      } else {
        kind.changed().tell(old, t);
      }
    }
    before.values().forEach(t -> add(kind.removed().apply(t)));
  }

  private void doorwayChanged(Doorway then, Doorway now) {
    Message door = named(now.name(), now.id());
    double before = then.width().mm();
    double after = now.width().mm();
    if (Math.abs(before - after) > 0.5) {
      add(Message.of("project.plan-changes.doorway-width", door, length(after), length(before)));
    }
    say(
        then.passage().clear(),
        now.passage().clear(),
        now.passage()
            .clear()
            .map(w -> Message.of("project.plan-changes.doorway-clear", door, length(w.mm())))
            .orElse(Message.of("project.plan-changes.doorway-clear-unknown", door)));
    say(
        then.passage().leadsTo(),
        now.passage().leadsTo(),
        Message.of("project.plan-changes.doorway-leads-to", door));
    say(
        then.passage().sealed(),
        now.passage().sealed(),
        now.passage().sealed()
            ? Message.of("project.plan-changes.doorway-sealed", door)
            : Message.of("project.plan-changes.doorway-open", door));
    boolean moved =
        then.piece() != now.piece() || Math.abs(then.offset().mm() - now.offset().mm()) > 0.5;
    say(false, moved, Message.of("project.plan-changes.doorway-moved", door));
    say(
        then.wayIn(),
        now.wayIn(),
        now.wayIn()
            ? Message.of("project.plan-changes.doorway-way-in", door)
            : Message.of("project.plan-changes.doorway-no-way-in", door));
    say(
        then.name(),
        now.name(),
        Message.of("project.plan-changes.doorway-renamed", then.name(), door));
  }

  private static Message mark(Mark m) {
    Message kind = m.kind().type().label();
    return m.name().isBlank()
        ? Message.of("project.plan-changes.mark-without-name", kind, m.id())
        : Message.of("project.plan-changes.mark", kind, m.name());
  }

  private void markChanged(Mark then, Mark now) {
    Message old = mark(then);
    if (!then.kind().type().equals(now.kind().type())) {
      add(Message.of("project.plan-changes.mark-became", old, now.kind().type().label()));
      return;
    }
    Message mark = mark(now);
    say(then.name(), now.name(), Message.of("project.plan-changes.mark-renamed", old, now.name()));
    say(then.kind(), now.kind(), Message.of("project.plan-changes.mark-described", mark));
    say(then.follows(), now.follows(), Message.of("project.plan-changes.mark-follows", mark));
    if (!then.form().getClass().equals(now.form().getClass())
        || then.form().spots().size() != now.form().spots().size()) {
      add(Message.of("project.plan-changes.mark-shape", mark));
    } else if (!then.form().sizes().equals(now.form().sizes())) {
      add(Message.of("project.plan-changes.mark-size", mark));
    } else {
      say(then.form(), now.form(), Message.of("project.plan-changes.mark-moved", mark));
    }
  }

  private void inlayChanged(Inlay then, Inlay now) {
    Message name = named(now.name(), now.id());
    say(
        then.name(),
        now.name(),
        Message.of("project.plan-changes.inlay-renamed", then.name(), name));
    boolean other =
        !then.graphic().equals(now.graphic()) || !then.accepted().equals(now.accepted());
    say(false, other, Message.of("project.plan-changes.inlay-graphic", name));
    double before = then.width().mm();
    double after = now.width().mm();
    if (Math.abs(before - after) > 0.5) {
      add(Message.of("project.plan-changes.inlay-width", name, length(after), length(before)));
    }
    say(
        then.middle().vec(),
        now.middle().vec(),
        Message.of("project.plan-changes.inlay-moved", name));
    say(then.turn(), now.turn(), Message.of("project.plan-changes.inlay-turned", name));
    say(then.spec(), now.spec(), Message.of("project.plan-changes.inlay-spec", name));
    say(then.source(), now.source(), Message.of("project.plan-changes.inlay-source", name));
  }
}
