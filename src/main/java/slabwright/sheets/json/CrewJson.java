package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import slabwright.site.job.JobCrew;
import slabwright.words.Words;
import slabwright.work.Presence;
import slabwright.work.SilicaShift;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.PersonRota;

/** Who is on the job and what each grinds in a shift; part of {@code days} of the work JSON. */
record CrewJson(WorkPlan plan, DayPlan days, Words words) {
  private void presence(ObjectNode root) {
    Presence here = Presence.of(days, plan.book());
    root.put("hoursOfSteps", here.steps().toString());
    root.put("hoursOfPresence", here.present().toString());
    ArrayNode all = root.putArray("presence");
    for (Presence.Day d : here.days()) {
      ObjectNode o =
          all.addObject()
              .put("from", d.span().start().toString())
              .put("to", d.span().end().toString());
      ArrayNode persons = o.putArray("persons");
      d.persons().stream().sorted().map(PersonRota::letter).forEach(persons::add);
    }
    ArrayNode unsaid = root.putArray("notCounted");
    here.unsaid().forEach(m -> unsaid.add(words.say(m)));
  }

  void addTo(ObjectNode root) {
    List<JobCrew.Person> persons = plan.site().job().crew().persons();
    ArrayNode crew = root.putArray("crew");
    for (int i = 0; i < days.hours().people(); i++) {
      ObjectNode o = crew.addObject().put("letter", PersonRota.letter(i));
      if (i < persons.size()) {
        JobCrew.Person p = persons.get(i);
        o.put("role", p.role()).put("name", p.name()).put("breathing", p.breathing());
      }
    }
    presence(root);
    root.put("silicaRule", words.say(SilicaShift.RULE));
    ArrayNode silica = root.putArray("silica");
    for (SilicaShift s : SilicaShift.of(plan, days)) {
      silica
          .addObject()
          .put("day", s.day().toString())
          .put("person", PersonRota.letter(s.person()))
          .put("tasks", s.tasks().toString())
          .put("byHand", s.byHand().toString())
          .put("over", s.isOver())
          .put("respirator", s.respirator().orElse(0))
          .put("swap", words.say(s.swap()));
    }
  }
}
