/**
 * The carcase at intake: its ticket, the marks of inspection, its temperature, and what was decided. It refuses to know who cuts
 * it, what comes off it and how that is judged.
 */
package ribmark.carcase;
