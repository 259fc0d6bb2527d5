package slabwright.tape.leastsquares;

import org.junit.jupiter.api.Tag;

@Tag("long")
class BlunderSoakTest extends BlunderTrials {
  BlunderSoakTest() {
    super(1000);
  }
}
