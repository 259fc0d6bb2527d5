/**
 * The shop book: the contractor's own rates, coverages, times, machines, crew and prices, read from
 * one commented text file. What the file does not say is a value of its own kind, never a guess.
 */
package slabwright.work.book;
