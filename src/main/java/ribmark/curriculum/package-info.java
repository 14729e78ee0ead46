/**
 * The content files read, proven and shown: stages, steps, cuts, landmarks, reference tables and the rules that go with
 * them. It refuses to know any apprentice, any carcase and any mark given.
 */
package ribmark.curriculum;
