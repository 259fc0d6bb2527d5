package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.words.Words;
import slabwright.work.ClosedAir;
import slabwright.work.HeldStep;
import slabwright.work.MeterWatch;
import slabwright.work.WorkPlan;
import slabwright.work.coat.Kits;
import slabwright.work.days.DayPlan;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.days.WorkStep;
import slabwright.work.handover.BuyLine;
import slabwright.work.handover.BuyList;
import slabwright.work.step.StepPlace;
import slabwright.work.step.ToolKind;
import slabwright.work.stop.JobStop;

/** What of the work can be done, who does it and what is closed; part of {@code work.json}. */
record OutlookJson(WorkPlan plan, Words words) {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  void addTo(ObjectNode root) {
    ArrayNode cannot = root.putArray("cannotStart");
    plan.outlook().cannotStart().forEach(m -> cannot.add(message(m)));
    ArrayNode stops = root.putArray("stops");
    plan.areas().stream().flatMap(a -> a.stops().stream()).forEach(s -> stops.add(stop(s)));
    ArrayNode buy = root.putArray("buy");
    BuyList.of(plan).forEach(b -> buy.add(buy(b)));
    ArrayNode held = root.putArray("held");
    plan.outlook().held().forEach(h -> held.add(held(h)));
    ArrayNode closed = root.putObject("air").putArray("closed");
    plan.outlook().closed().forEach(c -> closed.add(closed(c)));
    ArrayNode checks = root.putArray("checks");
    plan.outlook()
        .checks()
        .forEach(c -> checks.add(message(c.what()).put("area", c.area()).put("step", c.step())));
    days(root);
  }

  private ObjectNode message(Message m) {
    ObjectNode o = NODES.objectNode().put("key", m.key());
    ArrayNode values = o.putArray("values");
    for (Object v : m.values()) {
      if (v instanceof Number n) {
        values.add(JsonText.significant(n.doubleValue()));
      } else {
        values.add(v instanceof Message inner ? words.say(inner) : v.toString());
      }
    }
    return o.put("reason", words.say(m));
  }

  private ObjectNode buy(BuyLine b) {
    ObjectNode o = NODES.objectNode().put("product", b.product()).put("label", b.label());
    o.put("colour", b.colour().map(words::say).orElse(""));
    Optional<Kits> known = b.kits().maybe();
    if (known.isEmpty()) {
      return o.put("open", words.say(b.kits().text(k -> "")));
    }
    o.put("needed_l", JsonText.significant(known.get().needed() / QuantityFormat.LITRE_MM3));
    ArrayNode kits = o.putArray("kits");
    for (Kits.Line line : known.get().lines()) {
      double litres = line.kit().mm3() / QuantityFormat.LITRE_MM3;
      kits.addObject().put("count", line.count()).put("size_l", JsonText.significant(litres));
    }
    return o;
  }

  private ObjectNode stop(JobStop s) {
    ObjectNode o = message(s.reason()).put("area", s.area());
    o.put("step", s.step().map(k -> word(k.name())).orElse("drilling"));
    o.put("kind", word(s.kind().name()));
    o.put("state", word(s.state().getClass().getSimpleName()));
    return o.put("stands", words.say(s.standing())).put("blocks", s.blocks());
  }

  private static String word(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private ObjectNode held(HeldStep h) {
    ObjectNode o = message(h.why()).put("area", h.area()).put("step", h.step());
    ArrayNode frees = o.putArray("frees");
    h.frees().forEach(f -> frees.add(words.say(f)));
    return o;
  }

  private static ObjectNode closed(ClosedAir c) {
    ObjectNode o = NODES.objectNode().put("area", c.area()).put("step", c.step());
    c.span().ifPresent(s -> o.put("from", s.start().toString()).put("to", s.end().toString()));
    o.put("for", c.limit().isForEveryone() ? "everyone" : "unprotected");
    o.put("limit", c.limit().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    return o.put("after", c.after().map(Object::toString).orElse("never"));
  }

  /** Adds who does each step; where the job can't start the steps in order, without dates. */
  private void days(ObjectNode root) {
    Optional<DayPlan> dated = plan.days().maybe();
    Optional<DayPlan> known = dated.or(() -> plan.outlook().order().maybe());
    if (known.isEmpty() || !(root.get("days") instanceof ObjectNode days)) {
      return;
    }
    PersonRota rota = PersonRota.of(known.get());
    ArrayNode old = days.get("steps") instanceof ArrayNode a ? a : NODES.arrayNode();
    ArrayNode steps = NODES.arrayNode();
    List<ScheduledStep> all = known.get().steps();
    for (int i = 0; i < all.size(); i++) {
      ObjectNode o = old.get(i) instanceof ObjectNode there ? there : NODES.objectNode();
      ObjectNode told = step(all.get(i), o, rota, known.get(), dated.isPresent());
      if (MeterWatch.isAskedFor(plan, all.get(i).task().type())) {
        MeterWatch watch = MeterWatch.of(known.get(), all.get(i));
        told.put("meter", word(watch.standing().name()));
        told.put(
            "meterReader",
            watch.person().stream().mapToObj(PersonRota::letter).findFirst().orElse(null));
      }
      steps.add(told);
    }
    days.set("steps", steps);
    new CrewJson(plan, known.get(), words).addTo(days);
  }

  private static ObjectNode step(
      ScheduledStep s, ObjectNode o, PersonRota rota, DayPlan plan, boolean dated) {
    WorkStep task = s.task();
    o.put("id", task.id());
    o.put("kind", task.type().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    o.put("area", task.type().areaId());
    o.put("stencil", stencil(task).orElse(null));
    ArrayNode persons = o.putArray("persons");
    rota.letters(task.id()).forEach(persons::add);
    ArrayNode tools = o.putArray("tools");
    s.who().tools().forEach(t -> tools.add(t.name()));
    ArrayNode kinds = o.putArray("toolKinds");
    task.type().tools().stream().map(ToolKind::word).sorted().forEach(kinds::add);
    o.put("protection", task.air().protection());
    o.put("length", task.length().toString());
    ArrayNode spans = o.putArray("spans");
    if (dated) {
      s.spans().forEach(t -> spans.add(span(t)));
      o.put("restsAfter", plan.hours().restAfter(s.spans()).toString());
    }
    return o;
  }

  private static ObjectNode span(TimeSpan t) {
    return NODES.objectNode().put("start", t.start().toString()).put("end", t.end().toString());
  }

  /** The inlay's id and the stencil's place in laying order, from 1. */
  private static Optional<String> stencil(WorkStep task) {
    return task.type().subject().place() instanceof StepPlace.Inlay i
            && task.type().stencils().size() == 1
        ? Optional.of(i.id() + "/" + (task.type().stencils().get(0) + 1))
        : Optional.empty();
  }
}
