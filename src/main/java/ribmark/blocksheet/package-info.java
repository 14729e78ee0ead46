/**
 * A breakdown watched at the block: the sheet, the marks, what was seen, and the closing. It refuses to know what the evidence
 * adds up to, and what the scale says.
 */
package ribmark.blocksheet;
