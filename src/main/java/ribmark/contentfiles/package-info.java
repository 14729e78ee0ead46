/**
 * Content files read: each file by its path, each value with the place it stands at, each kind against its schema, and what
 * is wrong in words an author can use. It refuses to know whether what a file says is true of any animal.
 */
package ribmark.contentfiles;
