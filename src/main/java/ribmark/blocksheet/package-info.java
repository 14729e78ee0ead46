/**
 * A breakdown watched at the block: the sheet, the marks, what was seen, the closing, and the names put to steps that were shown.
 * It refuses to decide by itself whether evidence is enough, which is a rule of its own, and to know what the scale says.
 */
package ribmark.blocksheet;
