package slabwright.tape.leastsquares;

/** Fifty rooms; a thousand of them are the long run. */
class BlunderSearchTest extends BlunderTrials {
  BlunderSearchTest() {
    super(50);
  }
}
