package slabwright.work.air;

import java.util.List;

/**
 * What decides which lines the list of ignition and fire has.
 *
 * @param sources ignition sources drawn on the plan, by name
 * @param detectors how many smoke detectors and sprinkler heads the plan shows
 * @param indoors whether the floor is inside a building
 * @param permit whether the fire code asks for an operational permit
 * @param sprayed whether a product with solvent is sprayed
 * @param filmPulled whether a stencil is pulled up over dye with solvent
 * @param solvents of all that is laid; none means that there is no list
 * @param reader who reads the gas meter, by name; empty where nobody is named
 * @param unwatched whether some solvent is laid by all of the crew, so that nobody is left to read
 *     it
 */
public record IgnitionParameters(
    List<String> sources,
    int detectors,
    boolean indoors,
    boolean permit,
    boolean sprayed,
    boolean filmPulled,
    List<Solvent> solvents,
    String reader,
    boolean unwatched) {
  public IgnitionParameters {
    sources = List.copyOf(sources);
    solvents = List.copyOf(solvents);
  }
}
