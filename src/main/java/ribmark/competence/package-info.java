/** Whether the evidence for a step is enough, how recent it is, and how far assessors agree. It refuses to know pages, files and the database. */
package ribmark.competence;
