package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.words.Words;
import slabwright.work.AreaWorkPlan;
import slabwright.work.JobOutlook;
import slabwright.work.WorkPlan;
import slabwright.work.air.ConcentrationCurve;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.LaneGrid;
import slabwright.work.days.DayTable;
import slabwright.work.handover.Handovers;
import slabwright.work.handover.Reopening;
import slabwright.work.handover.Scope;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepSubject;
import slabwright.work.step.StepType;
import slabwright.work.stop.JobStop;

/** The work plan as JSON: every number that sheets 5 to 8 and the handovers print. */
public final class WorkJson {
  private WorkJson() {}

  /** What a step is, as a type: its id, name and area say it to a reader. */
  private static final Set<Class<?>> STEP_TYPES =
      Set.of(StepType.class, StepSubject.class, StepPlace.class);

  /**
   * Inputs that are reported elsewhere, and helpers that are functions and no figures: what they
   * give (peaks, means, lanes) is in the records beside them.
   */
  private static final Set<Class<?>> INPUTS_AND_HELPERS =
      Set.of(
          Site.class,
          FloorArea.class,
          ShopBook.class,
          ConcentrationCurve.class,
          LaneGrid.class,
          JobOutlook.class,
          JobStop.class);

  /** The days as the plan gives them to who asks. */
  private record LineByLine(Figure<DayTable> table) {}

  /** The work as indented JSON, one object. */
  public static String write(WorkPlan plan, Words words) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("site", plan.site().name());
    root.put("release", plan.site().releaseNumber());
    root.put("frame", TallyJson.siteFrame(words));
    root.put("notice", words.say(WorkPlan.NOTICE));
    root.put("shopBook", words.say(plan.book().origin()));
    RecordJson json = new RecordJson(both(INPUTS_AND_HELPERS, STEP_TYPES), words);
    root.setAll(json.fields(plan));
    root.setAll(json.fields(new LineByLine(plan.table())));
    new OutlookJson(plan, words).addTo(root);
    RecordJson papers = new RecordJson(both(Set.of(AreaWorkPlan.class), STEP_TYPES), words);
    ArrayNode totals = root.putArray("totals");
    for (AreaWorkPlan w : plan.areas()) {
      totals.add(papers.fields(AreaTotals.of(w, Reopening.of(w, plan))));
    }
    root.set("scope", papers.fields(Scope.of(plan)));
    root.set("handovers", papers.fields(Handovers.of(plan)));
    return JsonText.pretty(root);
  }

  private static Set<Class<?>> both(Set<Class<?>> some, Set<Class<?>> more) {
    return Stream.concat(some.stream(), more.stream()).collect(Collectors.toSet());
  }
}
