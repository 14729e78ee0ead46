/**
 * What the assessor said at the end of a sheet, as the apprentice reads it, and what the apprentice answers. It refuses to give
 * a mark, to weigh anything, and to say where somebody stands.
 */
package ribmark.feedback;
