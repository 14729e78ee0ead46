/**
 * What is taught and judged, as it stands once it is proven: stages, steps, cuts, landmarks, reference tables, and the pages
 * they are read on. It refuses to know any file, any apprentice, any carcase and any mark given.
 */
package ribmark.curriculum;
