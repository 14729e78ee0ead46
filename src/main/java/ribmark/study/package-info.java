/** Cards drawn from the curriculum for an apprentice to learn from. It refuses to know how anybody stands, and keeps nothing. */
package ribmark.study;
