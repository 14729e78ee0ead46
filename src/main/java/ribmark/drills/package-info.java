/**
 * Questions made from the skeleton and the content files, each with one right answer that follows from them. It refuses to know
 * who is asked, what they answered, and every fixed list of questions.
 */
package ribmark.drills;
