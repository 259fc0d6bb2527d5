/**
 * The yardsticks of the whole-process figures: {@link slabwright.bare.BareProgram} of commands,
 * {@link slabwright.bare.BareWindow} of the start of the desk.
 */
package slabwright.bare;
