/**
 * Where an apprentice stands on each step, what is missing, and the names put to steps that were shown or taken back again. It
 * refuses to watch, to mark, to decide by itself whether evidence is enough, which is a rule of its own, and to know what the
 * scale says.
 */
package ribmark.signing;
