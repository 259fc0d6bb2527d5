package slabwright.inlay.proof;

import java.util.Optional;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** One panel is not as the others, or not there. */
sealed interface PanelFault extends ProofFault {
  /** A panel of the plan is not in the drawing. */
  record PanelMissing(String panel, Vec at, double sizeMm) implements PanelFault {
    static PanelMissing of(Panel panel) {
      double size = Math.max(panel.box().width(), panel.box().height());
      return new PanelMissing(panel.name(), panel.box().middle(), size);
    }

    @Override
    public String kind() {
      return "panel-missing";
    }

    @Override
    public Optional<Vec> place() {
      return Optional.of(at);
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-fault.panel-missing", panel);
    }
  }

  /** One panel is a mirror image and others are not. */
  record PanelMirrored(String panel, Vec at, double sizeMm) implements PanelFault {
    static PanelMirrored of(String panel, Bounds box) {
      return new PanelMirrored(panel, box.middle(), Math.max(box.width(), box.height()));
    }

    @Override
    public String kind() {
      return "panel-mirrored";
    }

    @Override
    public Optional<Vec> place() {
      return Optional.of(at);
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-fault.panel-mirrored", panel);
    }
  }
}
