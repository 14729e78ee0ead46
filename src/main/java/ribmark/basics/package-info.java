/** The few types all parts speak. It knows no part, no file, no table and no page. */
package ribmark.basics;
