package slabwright.desk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ControlsTest {
  @Test
  void a_line_never_ends_inside_a_length() {
    assertThat(Controls.unbroken("does not fit, 1′ 9 7/16″ too narrow"))
        .isEqualTo("does not fit, 1′\u00a09\u00a07/16″ too narrow");
    assertThat(Controls.unbroken("blank 8′ 6 1/2″ × 8′ 6″, 3 panels"))
        .isEqualTo("blank 8′\u00a06\u00a01/2″ × 8′\u00a06″, 3 panels");
  }
}
