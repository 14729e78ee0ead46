/**
 * Content files read and proven: every file, every reference, every cut on the skeleton, every table, and what is wrong in
 * words an author can use. It refuses to know any person, any carcase and any page an apprentice studies from.
 */
package ribmark.proof;
