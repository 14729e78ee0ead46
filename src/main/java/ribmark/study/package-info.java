/**
 * Cards and made questions drawn from the curriculum for an apprentice to learn from, and when each is asked again. What is
 * answered here is no evidence: it stays out of the log, and no standing rests on it. It refuses to know how anybody stands.
 */
package ribmark.study;
