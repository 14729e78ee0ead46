/** Pieces on the scale: do they make up the carcase, how sure is that, and what does the reference say. It refuses to know how a block sheet is marked or signed. */
package ribmark.weighing;
