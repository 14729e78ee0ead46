/**
 * A breakdown watched at the block: the sheet, the marks, what was seen and the closing. It refuses to say where somebody stands
 * and to know what the scale says.
 */
package ribmark.blocksheet;
