package slabwright.work.prep;

import java.time.Duration;

/**
 * One mix of a filler or mortar, or one cartridge.
 *
 * @param number from 1
 * @param mixed mm³
 * @param used mm³ that go into gaps or are lost on the way; the rest sets in the pail
 * @param laying how long those who fill take to use it up
 */
public record Mix(int number, double mixed, double used, Duration laying) {}
