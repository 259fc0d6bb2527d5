package slabwright.tape;

import java.util.List;
import java.util.Optional;
import slabwright.tape.leastsquares.LeastSquaresFit;
import slabwright.tape.leastsquares.Reliability;
import slabwright.tape.leastsquares.Suspect;

/**
 * What the adjustment of all rows came to.
 *
 * @param quality of the rows used; empty when the readings leave something free
 * @param used the rows that stayed in, by place
 * @param leftOut gross errors that could be told, worst first
 * @param open a suspect that stayed in
 */
record AdjustmentSolution(
    LeastSquaresFit fit,
    Optional<Reliability> quality,
    List<Integer> used,
    List<Suspect> leftOut,
    Optional<Suspect> open) {}
