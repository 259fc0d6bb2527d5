package slabwright.inlay.proof;

import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** What the drawing's words say is not what it shows. */
sealed interface LabelFault extends ProofFault {
  /** One panel bears another's letter. */
  record LabelWrong(String panel, String label) implements LabelFault {
    @Override
    public String kind() {
      return "label-wrong";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-fault.label-wrong", panel, label);
    }
  }

  /** Two panels bear each other's letters. */
  record LabelsSwapped(String first, String second) implements LabelFault {
    @Override
    public String kind() {
      return "labels-swapped";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-fault.labels-swapped", first, second);
    }
  }

  /** A file named for one stencil shows another. */
  record StencilMisnamed(String file, int named, int shown) implements LabelFault {
    @Override
    public String kind() {
      return "stencil-misnamed";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-fault.stencil-misnamed", file, named, shown);
    }
  }
}
