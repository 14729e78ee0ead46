/**
 * What the content files say, proven: every reference, every cut on the skeleton, every table, and the curriculum made of
 * it. It refuses to know any person, any carcase and any page an apprentice studies from.
 */
package ribmark.proof;
