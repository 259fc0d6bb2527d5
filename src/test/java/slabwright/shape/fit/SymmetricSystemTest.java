package slabwright.shape.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class SymmetricSystemTest {
  private static final Offset<Double> CLOSE = within(1e-12);

  @Test
  void the_unknowns_solve_the_equations() {
    SymmetricSystem s = new SymmetricSystem(new double[][] {{4, 2}, {2, 3}}, new double[] {2, 5});

    assertThat(s.solve(0).orElseThrow()).containsExactly(new double[] {-0.5, 2}, CLOSE);
  }

  @Test
  void the_inverse_is_of_the_matrix_as_given_and_not_as_scaled() {
    SymmetricSystem s = new SymmetricSystem(new double[][] {{4, 2}, {2, 3}}, new double[2]);

    double[][] inverse = s.inverse(0).orElseThrow();

    assertThat(inverse[0]).containsExactly(new double[] {0.375, -0.25}, CLOSE);
    assertThat(inverse[1]).containsExactly(new double[] {-0.25, 0.5}, CLOSE);
  }

  @Test
  void unknowns_of_very_different_units_are_no_reason_to_give_up() {
    SymmetricSystem s =
        new SymmetricSystem(new double[][] {{1e12, 0}, {0, 1e-12}}, new double[] {1e12, 3e-12});

    assertThat(s.solve(0).orElseThrow()).containsExactly(new double[] {1, 3}, CLOSE);
  }

  @Test
  void equations_that_leave_something_free_have_no_solution() {
    SymmetricSystem s = new SymmetricSystem(new double[][] {{1, 1}, {1, 1}}, new double[] {1, 1});

    assertThat(s.solve(0)).isEmpty();
    assertThat(s.inverse(0)).isEmpty();
  }

  @Test
  void damping_leaves_alone_what_is_free() {
    SymmetricSystem s = new SymmetricSystem(new double[][] {{2, 0}, {0, 0}}, new double[] {6, 0});

    assertThat(s.solve(1e-9).orElseThrow()).containsExactly(new double[] {3, 0}, within(1e-8));
  }
}
