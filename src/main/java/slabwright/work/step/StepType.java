package slabwright.work.step;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.units.SortedCopy;

/**
 * What a step of work is. Steps that release vapour carry the number of their coat and differ by
 * their types; laying or pulling up one stencil at two places of the finish gives equal types.
 *
 * @param areaId of the floor area it happens on
 * @param coat which coat of the finish, for a coat and a mist coat
 * @param stencils of the inlay that it is done with or laid for, by their place in laying order
 *     from 0; empty for everything else
 * @param tools of the shop that it holds while it lasts
 */
public record StepType(
    String areaId,
    StepSubject subject,
    StepMeans means,
    Optional<CoatNumber> coat,
    List<Integer> stencils,
    Set<ToolKind> tools,
    AirEffect air) {
  public StepType {
    stencils = List.copyOf(stencils);
    tools = SortedCopy.of(tools);
  }

  /** Grinding, filling and cleaning before anything is laid. */
  public static StepType prep(
      String areaId, StepSubject subject, StepMeans means, Set<ToolKind> tools, AirEffect air) {
    return new StepType(areaId, subject, means, Optional.empty(), List.of(), tools, air);
  }

  /** Grinding concrete with the grinder that the means asks for and a vacuum. */
  public static StepType grinding(String areaId, StepSubject subject, StepMeans means) {
    ToolKind grinder = means == StepMeans.MACHINE ? ToolKind.FLOOR_GRINDER : ToolKind.HAND_GRINDER;
    return prep(areaId, subject, means, Set.of(grinder, ToolKind.VACUUM), AirEffect.DUST);
  }

  /** A coat of the whole floor. */
  public static StepType coat(String areaId, CoatNumber coat, AirEffect air) {
    return coat(areaId, coat, Set.of(), air);
  }

  /** A coat of the whole floor, laid with some tools. */
  public static StepType coat(String areaId, CoatNumber coat, Set<ToolKind> tools, AirEffect air) {
    return new StepType(
        areaId,
        StepSubject.of(StepKind.COAT, StepPlace.WHOLE_FLOOR),
        StepMeans.HAND,
        Optional.of(coat),
        List.of(),
        tools,
        air);
  }

  /**
   * Abrading before this step, which missed its recoat window: with a screen under the floor
   * grinder and the vacuum at it. Coats are no concrete, so the silica rule does not count it.
   */
  public StepType abrading() {
    return prep(
        areaId,
        StepSubject.of(StepKind.ABRADE, subject.place()),
        StepMeans.MACHINE,
        Set.of(ToolKind.FLOOR_GRINDER, ToolKind.VACUUM),
        AirEffect.DUST);
  }

  public StepKind kind() {
    return subject.kind();
  }

  /** Concrete ground by hand: what the silica rule counts. */
  public boolean isHandGrinding() {
    return means == StepMeans.HAND && kind().grindsConcrete();
  }

  /** Concrete ground by machine: each walks behind one of their own. */
  public boolean isMachineGrinding() {
    return means == StepMeans.MACHINE && kind().grindsConcrete();
  }

  /** Whether it runs machines whose motors, switches or tools spark. */
  public boolean sparks() {
    return tools.stream().anyMatch(ToolKind::sparks);
  }

  public boolean isOn(String area) {
    return areaId.equals(area);
  }
}
