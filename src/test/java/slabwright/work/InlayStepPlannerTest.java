package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepKind;

/** The graphic of the tram hall, its first color in the floor's dye, the others in their own. */
class InlayStepPlannerTest {
  private static final ShopBook BOOK =
      ShopBook.of(BookSamples.text().with("product", "inlay-dye", "recoat until", "2 h"));
  private static final AreaWorkPlan HALL =
      WorkSamples.plan(WorkSamples.tramHall(), BOOK).areas().get(0);
  private static final CoatPlan OWN =
      HALL.coats().stream()
          .filter(
              c -> c.product().kind().maybe().filter(k -> k == ProductKind.INLAY_DYE).isPresent())
          .findFirst()
          .orElseThrow();
  private static final CoatPlan OTHER = other();

  private static CoatPlan other() {
    Product dye = BOOK.first(ProductKind.BASE_DYE).orElseThrow();
    return CoatPlan.of(OWN.job().withProduct(dye).withPlace(OWN.job().place() + 1).withCoats(2));
  }

  private static AreaTakeoff floor(List<InlayTakeoff.StencilDye> dyes) {
    AreaTakeoff f = HALL.floor();
    List<InlayTakeoff> inlays = List.of(f.inlays().get(0).withDyes(dyes));
    return new AreaTakeoff(f.area(), f.floor(), f.cutIn(), f.wayOut(), f.prep(), f.tops(), inlays);
  }

  private static List<InlayTakeoff.StencilDye> dyes() {
    List<InlayTakeoff.StencilDye> dyes = new ArrayList<>(HALL.floor().inlays().get(0).dyes());
    dyes.set(0, dyes.get(0).withProduct(OTHER.product().id()));
    return dyes;
  }

  private static List<WorkStep> steps(
      List<InlayTakeoff.StencilDye> dyes, boolean dyed, CoatPlan... coats) {
    AreaTakeoff floor = floor(dyes);
    StepSequence chain = new StepSequence(floor.area().id(), floor.area().name());
    new InlayStepPlanner(floor, BOOK, chain, StepTypes.of(floor)).add(List.of(coats), dyed);
    return chain.tasks().maybe().orElseThrow();
  }

  private static List<WorkStep> of(List<WorkStep> steps, StepKind kind, int stencil) {
    return steps.stream()
        .filter(s -> s.type().kind() == kind && s.type().stencils().equals(List.of(stencil)))
        .toList();
  }

  @Test
  void every_stencil_is_misted_with_its_own_dye_as_often_as_that_is_laid() {
    List<WorkStep> steps = steps(dyes(), false, OWN, OTHER);
    assertThat(of(steps, StepKind.MIST_COAT, 0))
        .extracting(s -> s.type().coat())
        .containsExactly(
            Optional.of(new CoatNumber(OTHER.job().place(), 1)),
            Optional.of(new CoatNumber(OTHER.job().place(), 2)));
    assertThat(of(steps, StepKind.MIST_COAT, 1))
        .hasSize(3)
        .allMatch(s -> s.type().coat().orElseThrow().place() == OWN.job().place());
  }

  @Test
  void a_stencil_whose_dye_is_not_among_the_coats_is_left_for_another_time() {
    List<WorkStep> steps = steps(dyes(), false, OWN);
    assertThat(of(steps, StepKind.LAY_STENCIL, 0)).isEmpty();
    assertThat(of(steps, StepKind.LAY_STENCIL, 1)).hasSize(1);
    assertThat(steps(dyes().subList(0, 1), true, OWN)).isEmpty();
  }

  @Test
  void only_on_a_dyed_floor_is_its_residue_taken_off_before() {
    assertThat(steps(dyes(), true, OWN, OTHER).get(0).type().kind())
        .isEqualTo(StepKind.DYE_RESIDUE_OFF);
    assertThat(steps(dyes(), false, OWN, OTHER).get(0).type().kind()).isEqualTo(StepKind.TACK_TEST);
  }

  /** The window shuts two hours after the first bit is laid for the next coat, not for the film. */
  @Test
  void the_stencil_comes_up_after_the_last_coat_as_late_as_one_likes() {
    List<WorkStep> steps = steps(dyes(), false, OWN, OTHER);
    List<WorkStep> mists = of(steps, StepKind.MIST_COAT, 1);
    assertThat(mists.get(1).waits())
        .extracting(StepWait::atMost)
        .containsExactly(Optional.of(Duration.ofHours(2).minus(mists.get(0).length())));
    assertThat(of(steps, StepKind.PULL_UP_STENCIL, 1).get(0).waits())
        .allMatch(w -> w.atMost().isEmpty())
        .anyMatch(w -> w.after().equals(mists.get(2).id()) && !w.atLeast().isZero());
  }
}
