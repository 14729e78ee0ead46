/**
 * The skeleton drawn from data: every bone a shape of its own, the line of a cut, the pieces after a step. It refuses to know
 * any apprentice, any carcase and any mark given.
 */
package ribmark.bonemap;
