package slabwright;

import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Cuts every property to at most {@code -Dslabwright.tries} tries, and lets a failing one fail
 * without looking for a smaller example. Without that system property nothing is changed. For runs
 * that put small faults into the program (see DEVELOPERS.md): there each fault is tried against
 * many tests, and a search for a smaller example, up to ten seconds, is of no use.
 */
public final class FewTries implements AroundPropertyHook {
  private static final int USUAL_TRIES = 200;

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    Integer most = Integer.getInteger("slabwright.tries");
    if (most != null) {
      PropertyAttributes attributes = context.attributes();
      attributes.setTries(Math.min(most, attributes.tries().orElse(USUAL_TRIES)));
      attributes.setShrinking(ShrinkingMode.OFF);
    }
    return property.execute();
  }
}
