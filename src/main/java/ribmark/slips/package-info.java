/**
 * What a set of weights says about its own slips and about a line cut elsewhere than meant. It refuses to know where a weight was
 * typed, who cut, and any file, table of the database or page.
 */
package ribmark.slips;
