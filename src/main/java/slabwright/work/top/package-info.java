/** Counter tops and stairs of concrete: small jobs of their own, ground by hand. */
package slabwright.work.top;
