package slabwright.tape;

import java.util.List;
import java.util.Optional;

/**
 * What the adjustment of all rows came to.
 *
 * @param quality of the rows used; empty when the readings leave something free
 * @param used the rows that stayed in, by place
 * @param leftOut gross errors that could be told, worst first
 * @param open a suspect that stayed in
 */
record Solution(
    Fit fit,
    Optional<Quality> quality,
    List<Integer> used,
    List<Suspect> leftOut,
    Optional<Suspect> open) {}
